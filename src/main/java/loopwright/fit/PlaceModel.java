package loopwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.IntStream;
import loopwright.catalog.chassis.Place;
import loopwright.catalog.chassis.Place.Holds;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.Drive.DriveForm;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Supply;
import loopwright.fit.rules.Role;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.IntVar;

/** The Choco model of the places: which part goes where, one part a place. */
final class PlaceModel {

    /** No separate reservoir, or no place for the part. */
    static final int NOWHERE = -1;

    /** Everything has a place. */
    static final int NONE_LEFT_OUT = 0;

    private static final int SUPPLY = 0;
    private static final int PUMP = 1;
    private static final int RESERVOIR = 2;
    private static final int FIRST_DRIVE = 3;

    /**
     * Parts in places.
     *
     * @param parts index of the part set
     * @param supply the supply's place, by its index in the chassis
     * @param pump the pump's
     * @param reservoir the reservoir's, or {@link #NOWHERE}
     * @param drives the placed drives', in the brief's order
     */
    record Placing(int parts, int supply, int pump, int reservoir, List<Integer> drives) {}

    private final List<Place> places;
    private final List<PartSet> sets;
    private final List<Drive> drives;
    private final int leftOut;
    private final Model model = new Model("places");

    PlaceModel(FitCase fitCase, List<PartSet> sets) {
        this(fitCase, sets, NONE_LEFT_OUT);
    }

    /**
     * Places for all parts but some.
     *
     * @param leftOut bit 0 the supply, 1 the pump, 2 the reservoir, from 3 on the drives: those that are nowhere
     */
    PlaceModel(FitCase fitCase, List<PartSet> sets, int leftOut) {
        this.places = fitCase.chassis().inside().places();
        this.sets = sets;
        this.drives = fitCase.placedDrives();
        this.leftOut = leftOut;
    }

    /** How many bits {@code leftOut} may have. */
    static int parts(FitCase fitCase) {
        return FIRST_DRIVE + fitCase.placedDrives().size();
    }

    private boolean isLeftOut(int part) {
        return (leftOut >> part & 1) == 1;
    }

    /**
     * Every placing, in order of part set and places.
     *
     * @param usable bit p: the p-th place can be used
     */
    List<Placing> all(long usable) {
        if (sets.isEmpty()) {
            return List.of();
        }
        int none = places.size();
        IntVar set = model.intVar("parts", 0, sets.size() - 1);
        IntVar supply = model.intVar("supply", 0, none);
        IntVar pump = model.intVar("pump", 0, none);
        IntVar reservoir = model.intVar("reservoir", 0, none);
        IntVar[] drivePlaces = IntStream.range(0, drives.size())
                .mapToObj(k -> model.intVar("drive." + k, 0, none))
                .toArray(IntVar[]::new);
        held(set, supply, usable, wanted(SUPPLY, s -> List.of(holds(s.example().the(Role.SUPPLY, Supply.class)))));
        held(set, pump, usable, wanted(PUMP, s -> List.of(holds(pumpOf(s)))));
        held(
                set,
                reservoir,
                usable,
                wanted(RESERVOIR, s -> pumpOf(s).kind() == Pump.Kind.PUMP ? List.of(Holds.RESERVOIR) : List.of()));
        for (int k = 0; k < drivePlaces.length; k++) {
            int here = k;
            Holds form = holds(drives.get(k));
            held(set, drivePlaces[k], usable, wanted(FIRST_DRIVE + k, s -> List.of(form)));
            // Drives alike can be swapped: those with places stand in the brief's order.
            alikeBefore(k)
                    .ifPresent(j ->
                            model.arithm(drivePlaces[j], "<", drivePlaces[here]).post());
        }
        List<IntVar> all = new ArrayList<>(List.of(set, supply, pump, reservoir));
        all.addAll(List.of(drivePlaces));
        IntVar[] inPlaces = IntStream.range(0, all.size() - 1)
                .filter(part -> !isLeftOut(part))
                .mapToObj(part -> all.get(part + 1))
                .toArray(IntVar[]::new);
        if (inPlaces.length > 0) {
            model.allDifferent(inPlaces).post();
        }
        model.getSolver().setSearch(Search.inputOrderLBSearch(all.toArray(IntVar[]::new)));
        List<Placing> out = new ArrayList<>();
        while (model.getSolver().solve()) {
            List<Integer> driveAt = IntStream.of(IntStream.range(0, drivePlaces.length)
                            .map(k -> at(drivePlaces[k]))
                            .toArray())
                    .boxed()
                    .toList();
            out.add(new Placing(set.getValue(), at(supply), at(pump), at(reservoir), driveAt));
        }
        return List.copyOf(out);
    }

    /** The last drive before the k-th that has a place and takes the same room in the same places. */
    private OptionalInt alikeBefore(int k) {
        return IntStream.range(0, isLeftOut(FIRST_DRIVE + k) ? 0 : k)
                .filter(j -> !isLeftOut(FIRST_DRIVE + j) && areAlike(drives.get(j), drives.get(k)))
                .max();
    }

    private static boolean areAlike(Drive one, Drive other) {
        return one.form() == other.form()
                && one.body().equals(other.body())
                && one.plugRoomMm().equals(other.plugRoomMm());
    }

    private int at(IntVar place) {
        return place.getValue() == places.size() ? NOWHERE : place.getValue();
    }

    /** What holds a part; nothing when it is left out. */
    private Function<PartSet, List<Holds>> wanted(int part, Function<PartSet, List<Holds>> holds) {
        return isLeftOut(part) ? s -> List.of() : holds;
    }

    /** A place of a usable kind for each part set; a set that wants none is nowhere. */
    private void held(IntVar set, IntVar place, long usable, Function<PartSet, List<Holds>> wanted) {
        Tuples tuples = new Tuples(true);
        for (int s = 0; s < sets.size(); s++) {
            List<Holds> forms = wanted.apply(sets.get(s));
            if (forms.isEmpty()) {
                tuples.add(s, places.size());
            }
            for (int p = 0; p < places.size(); p++) {
                boolean open = (usable >>> p & 1L) != 0;
                if (open && places.get(p).holds().stream().anyMatch(forms::contains)) {
                    tuples.add(s, p);
                }
            }
        }
        if (tuples.nbTuples() == 0) {
            model.falseConstraint().post();
        } else {
            model.table(new IntVar[] {set, place}, tuples).post();
        }
    }

    private static Pump pumpOf(PartSet set) {
        return set.example().the(Role.PUMP, Pump.class);
    }

    private static Holds holds(Supply supply) {
        return switch (supply.form()) {
            case ATX -> Holds.ATX;
            case SFX -> Holds.SFX;
            case SFX_L -> Holds.SFX_L;
        };
    }

    private static Holds holds(Pump pump) {
        return pump.kind() == Pump.Kind.PUMP ? Holds.PUMP : Holds.PUMP_RESERVOIR;
    }

    private static Holds holds(Drive drive) {
        return drive.form() == DriveForm.D2_5 ? Holds.D2_5 : Holds.D3_5;
    }
}
