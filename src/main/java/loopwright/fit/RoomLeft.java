package loopwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import loopwright.catalog.chassis.Place;
import loopwright.catalog.chassis.Shell;
import loopwright.fit.Growth.Measure;

/**
 * The room that a layout leaves: how far the card, the supply, the memory and each radiator could grow, one at a time,
 * and what would still fit on the mounts without a radiator.
 *
 * <p>Everything else stays as the layout's witness has it: its mods, its choice of parts and their places. Stacks may
 * slide anywhere in their ranges. Unit: hundredths of a millimetre.
 */
public final class RoomLeft {

    private final FitCase fitCase;
    private final SceneMaker maker;
    private final RadiatorGrowth radiators;

    /** Room in layouts of a case. */
    public RoomLeft(FitCase fitCase) {
        this.fitCase = fitCase;
        this.maker = new SceneMaker(fitCase, List.of());
        this.radiators = new RadiatorGrowth(fitCase);
    }

    /** Card, supply and memory, then the mounts in the chassis's order, patterns from small to large. */
    public List<Growth> of(Witness witness) {
        List<Integer> still = new ArrayList<>(maker.bodies().builtIn(witness.mods()));
        still.addAll(maker.bodies().parts(new PartSet(0, witness.parts(), List.of(witness.parts())), placing(witness)));
        List<List<Hang>> stacks = new ArrayList<>();
        for (Witness.At at : witness.stacks()) {
            stacks.add(maker.hangs(at.stack().frame(), at.stack().shape(), witness.mods()));
        }
        Surroundings all = new Surroundings(maker, still, stacks);
        List<Growth> out = new ArrayList<>();
        for (PartGrowth.Part part : parts(witness, all)) {
            Surroundings others = all.withoutStill(indexOf(all, id(part.measure())));
            out.add(growth(others, part.growing(), part.measure(), part.nowHmm(), Optional.empty()));
        }
        for (MountFrame frame : fitCase.frames()) {
            Optional<Shape> radiator = radiator(witness, frame);
            Surroundings others = all.withoutMount(frame);
            if (radiator.isPresent()) {
                out.add(thicker(others, frame, radiator.get(), witness.mods()));
            } else {
                out.addAll(new EmptyMount(fitCase, radiators, frame, witness.mods(), others).growths());
            }
        }
        return List.copyOf(out);
    }

    private PlaceModel.Placing placing(Witness witness) {
        return placing(fitCase, witness);
    }

    /** Places by their numbers. */
    static PlaceModel.Placing placing(FitCase fitCase, Witness witness) {
        List<Integer> drives = new ArrayList<>();
        int supply = PlaceModel.NOWHERE;
        int pump = PlaceModel.NOWHERE;
        int reservoir = PlaceModel.NOWHERE;
        for (Witness.InPlace part : witness.places()) {
            int place = placeIndex(fitCase, part.place());
            switch (part.what()) {
                case "supply" -> supply = place;
                case "pump" -> pump = place;
                case "reservoir" -> reservoir = place;
                default -> drives.add(place);
            }
        }
        return new PlaceModel.Placing(0, supply, pump, reservoir, List.copyOf(drives));
    }

    private int placeIndex(String id) {
        return placeIndex(fitCase, id);
    }

    private static int placeIndex(FitCase fitCase, String id) {
        List<Place> places = fitCase.chassis().inside().places();
        for (int i = 0; i < places.size(); i++) {
            if (places.get(i).id().equals(id)) {
                return i;
            }
        }
        throw new IllegalArgumentException("no place " + id);
    }

    private List<PartGrowth.Part> parts(Witness witness, Surroundings all) {
        PartGrowth growth = new PartGrowth(fitCase, witness.parts());
        Place place = witness.places().stream()
                .filter(p -> p.what().equals("supply"))
                .findFirst()
                .map(p -> fitCase.chassis().inside().places().get(placeIndex(p.place())))
                .orElseThrow();
        return List.of(
                growth.card(occupant(all, Measure.CARD_LENGTH)),
                growth.supply(occupant(all, Measure.SUPPLY_LENGTH), place),
                growth.memory(occupant(all, Measure.MEMORY_HEIGHT)));
    }

    private static Occupant occupant(Surroundings all, Measure measure) {
        return all.stillBody(indexOf(all, id(measure))).occupant();
    }

    private static String id(Measure measure) {
        return switch (measure) {
            case CARD_LENGTH -> "card";
            case SUPPLY_LENGTH -> "supply";
            case MEMORY_HEIGHT -> "memory";
            case RADIATOR_THICKNESS -> throw new IllegalArgumentException("radiators are no parts in places");
        };
    }

    private static int indexOf(Surroundings all, String bodyId) {
        for (int i = 0; i < all.stillBodies(); i++) {
            if (all.stillBody(i).occupant().body().id().equals(bodyId)) {
                return i;
            }
        }
        throw new IllegalArgumentException("no body " + bodyId);
    }

    private static Optional<Shape> radiator(Witness witness, MountFrame frame) {
        return witness.stacks().stream()
                .map(Witness.At::stack)
                .filter(s -> s.frame().index() == frame.index())
                .map(Layout.Stack::shape)
                .filter(s -> s.arrangement().hasRadiator())
                .findFirst();
    }

    private Growth thicker(Surroundings others, MountFrame frame, Shape shape, ModSet mods) {
        return growth(
                others,
                radiators.of(frame, shape, mods),
                Measure.RADIATOR_THICKNESS,
                shape.thicknessHmm(),
                Optional.of(new Growth.At(frame, shape.pattern(), Optional.of(shape))));
    }

    private Growth growth(Surroundings others, Growing growing, Measure measure, int nowHmm, Optional<Growth.At> at) {
        Shell.Interior interior = fitCase.chassis().shell().interior();
        GrowthLimit limit = new GrowthLimit(others, growing, interior);
        if (!limit.standsAt(0)) {
            throw new IllegalStateException("a layout that fits does not stand when its " + measure + " is asked for");
        }
        OptionalInt most = limit.most();
        return new Growth(
                measure,
                at,
                Optional.of(nowHmm),
                most.isPresent() ? Optional.of(nowHmm + most.getAsInt()) : Optional.empty(),
                most.isPresent() ? limit.blocker().beyond(most.getAsInt()) : Growth.NOTHING);
    }
}
