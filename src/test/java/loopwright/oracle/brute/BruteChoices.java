package loopwright.oracle.brute;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import loopwright.catalog.Catalog;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.brief.Wanted;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Place;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Memory;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Reservoir;
import loopwright.catalog.part.Supply;

/** Every choice of parts and places as the list of bodies it puts into the case. */
final class BruteChoices {
    private final Catalog catalog;
    private final Chassis chassis;
    private final Brief brief;
    private final BruteParts parts;
    private final BruteElectric electric;
    private final List<Drive> drives = new ArrayList<>();

    BruteChoices(Catalog catalog, Chassis chassis, Brief brief, Fault fault) {
        this.catalog = catalog;
        this.chassis = chassis;
        this.brief = brief;
        this.parts = new BruteParts(catalog, chassis);
        this.electric = new BruteElectric(catalog, brief, fault);
        brief.parts().drives().forEach(id -> drives.add(catalog.part(Drive.class, id)));
    }

    /**
     * Parts and the bodies that they put into the case.
     *
     * @param parts board, processor, card, memory, block, supply, pump, and reservoir where there is one
     */
    record Chosen(List<Part> parts, List<BruteBody> bodies) {
        Chosen and(Part... more) {
            List<Part> all = new ArrayList<>(parts);
            all.addAll(List.of(more));
            return new Chosen(List.copyOf(all), bodies);
        }
    }

    /** Bodies of every choice for a mod set; pairs are not looked at yet. */
    List<List<BruteBody>> worlds(Set<String> mods) {
        return choices(mods).stream().map(Chosen::bodies).toList();
    }

    /** Every choice of parts and places for a mod set; pairs are not looked at yet. */
    List<Chosen> choices(Set<String> mods) {
        List<Chosen> out = new ArrayList<>();
        Wanted want = brief.parts();
        for (Board board : role(Board.class, Optional.of(want.board()))) {
            for (Processor processor : role(Processor.class, Optional.of(want.processor()))) {
                for (GraphicsCard card : role(GraphicsCard.class, Optional.of(want.card()))) {
                    for (Memory memory : role(Memory.class, Optional.of(want.memory()))) {
                        for (Block block : role(Block.class, Optional.of(want.processorBlock()))) {
                            if (together(board, processor, memory, block)) {
                                List<BruteBody> bodies = new ArrayList<>(parts.chassisBodies(mods));
                                bodies.addAll(parts.boardBodies(board, memory, block, card));
                                Chosen chosen = new Chosen(List.of(board, processor, card, memory, block), bodies);
                                powered(mods, board, processor, card, chosen, out);
                            }
                        }
                    }
                }
            }
        }
        return out;
    }

    private boolean together(Board board, Processor processor, Memory memory, Block block) {
        long onBoard =
                drives.stream().filter(d -> d.form() == Drive.DriveForm.M2).count();
        return chassis.inside().board().forms().contains(board.form())
                && processor.socket().equals(board.sockets().processorSocket())
                && block.sockets().contains(processor.socket())
                && memory.generation().equals(board.sockets().memory().generation())
                && memory.modules() <= board.sockets().memory().sockets()
                && onBoard <= board.electric().m2Sockets()
                && drives.size() - onBoard <= board.electric().sataPorts();
    }

    private void powered(
            Set<String> mods, Board board, Processor processor, GraphicsCard card, Chosen chosen, List<Chosen> out) {
        for (Supply supply : role(Supply.class, brief.parts().supply())) {
            for (Pump pump : role(Pump.class, brief.loop().pumps())) {
                BruteElectric.Asking asking = new BruteElectric.Asking(board, processor, card, pump);
                if (electric.broken(asking, supply).isEmpty()) {
                    watered(mods, supply, pump, chosen.and(supply, pump), out);
                }
            }
        }
    }

    private void watered(Set<String> mods, Supply supply, Pump pump, Chosen chosen, List<Chosen> out) {
        List<ToPlace> todo = new ArrayList<>();
        todo.add(new ToPlace(
                Place.Holds.valueOf(supply.form().name()),
                p -> BruteParts.placed(p, supply.body(), supply.plugRoomMm())));
        for (Drive d : drives) {
            if (d.form() != Drive.DriveForm.M2) {
                todo.add(new ToPlace(
                        Place.Holds.valueOf(d.form().name()), p -> BruteParts.placed(p, d.body(), d.plugRoomMm())));
            }
        }
        todo.add(new ToPlace(
                Place.Holds.valueOf(pump.kind().name()),
                p -> BruteParts.placed(p, pump.body(), pump.water().portRoomMm())));
        if (pump.kind() == Pump.Kind.PUMP_RESERVOIR) {
            place(mods, todo, 0, new ArrayList<>(), chosen, out);
            return;
        }
        for (Reservoir reservoir : role(Reservoir.class, brief.loop().reservoirs())) {
            List<ToPlace> all = new ArrayList<>(todo);
            all.add(new ToPlace(
                    Place.Holds.RESERVOIR, p -> BruteParts.placed(p, reservoir.body(), reservoir.portRoomMm())));
            place(mods, all, 0, new ArrayList<>(), chosen.and(reservoir), out);
        }
    }

    private record ToPlace(Place.Holds form, java.util.function.Function<Place, BruteBody> at) {}

    private void place(
            Set<String> mods, List<ToPlace> todo, int next, List<Place> taken, Chosen chosen, List<Chosen> out) {
        List<BruteBody> bodies = chosen.bodies();
        if (next == todo.size()) {
            out.add(new Chosen(chosen.parts(), List.copyOf(bodies)));
            return;
        }
        for (Place place : chassis.inside().places()) {
            if (taken.contains(place)
                    || !place.holds().contains(todo.get(next).form())
                    || !usable(chassis, place, mods)) {
                continue;
            }
            taken.add(place);
            bodies.add(todo.get(next).at().apply(place));
            place(mods, todo, next + 1, taken, chosen, out);
            bodies.remove(bodies.size() - 1);
            taken.remove(place);
        }
    }

    static boolean usable(Chassis chassis, Place place, Set<String> mods) {
        boolean opens = false;
        boolean opened = false;
        for (Mod mod : chassis.mods()) {
            boolean done = mods.contains(mod.id());
            boolean gone = mod.effect().closesPlaces().contains(place.id())
                    || place.inside().filter(mod.effect().removes()::contains).isPresent();
            if (done && gone) {
                return false;
            }
            boolean here = mod.effect().opensPlaces().contains(place.id());
            opens |= here;
            opened |= here && done;
        }
        return opened || !opens;
    }

    static long mW(double watts) {
        return BigDecimal.valueOf(watts)
                .movePointRight(3)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
    }

    private <P extends Part> List<P> role(Class<P> kind, Optional<Choice> choice) {
        return catalog.all(kind).stream()
                .filter(p -> choice.isEmpty()
                        || choice.get().anyOf().isEmpty()
                        || choice.get().anyOf().contains(p.id()))
                .filter(p -> choice.isEmpty() || fastEnough(p, choice.get()))
                .toList();
    }

    static boolean fastEnough(Part part, Choice choice) {
        int floor = choice.performanceMin().orElse(0);
        if (part instanceof Processor p) {
            return p.performance() >= floor;
        }
        return !(part instanceof GraphicsCard c) || c.performance() >= floor;
    }
}
