package loopwright.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Place;
import loopwright.catalog.chassis.Place.Holds;

/**
 * What mods do to the places for drives; lists in the chassis's order.
 *
 * @param gone places as delivered that the mods take away
 * @param left places as delivered that stay
 * @param opened places that the mods make
 * @param possible places that one more mod would make, which goes with these
 */
public record DrivePlaces(List<Place> gone, List<Place> left, List<Place> opened, List<Place> possible) {

    private static final Set<Holds> DRIVES = Set.of(Holds.D2_5, Holds.D3_5);

    /** Copies. */
    public DrivePlaces {
        gone = List.copyOf(gone);
        left = List.copyOf(left);
        opened = List.copyOf(opened);
        possible = List.copyOf(possible);
    }

    /** The places with some mods done. */
    public static DrivePlaces of(Chassis chassis, List<Mod> mods) {
        List<Place> gone = new ArrayList<>();
        List<Place> left = new ArrayList<>();
        List<Place> opened = new ArrayList<>();
        List<Place> possible = new ArrayList<>();
        for (Place place : chassis.inside().places()) {
            if (place.holds().stream().noneMatch(DRIVES::contains)) {
                continue;
            }
            boolean before = usable(chassis, place, List.of());
            boolean after = usable(chassis, place, mods);
            if (before) {
                (after ? left : gone).add(place);
            } else if (after) {
                opened.add(place);
            } else if (chassis.mods().stream().anyMatch(m -> makes(chassis, place, mods, m))) {
                possible.add(place);
            }
        }
        return new DrivePlaces(gone, left, opened, possible);
    }

    private static boolean makes(Chassis chassis, Place place, List<Mod> mods, Mod more) {
        Set<String> done = mods.stream().map(Mod::id).collect(Collectors.toSet());
        boolean goes = !done.contains(more.id())
                && done.containsAll(more.rules().requires())
                && more.rules().excludes().stream().noneMatch(done::contains)
                && mods.stream().noneMatch(m -> m.rules().excludes().contains(more.id()));
        List<Mod> with = new ArrayList<>(mods);
        with.add(more);
        return goes && usable(chassis, place, with);
    }

    /** Whether a place is there: nothing closes it, what it is in stays, and what opens it, if anything does, is done. */
    private static boolean usable(Chassis chassis, Place place, List<Mod> mods) {
        boolean closed = mods.stream().anyMatch(m -> m.effect().closesPlaces().contains(place.id()));
        boolean out = place.inside()
                .map(in -> mods.stream().anyMatch(m -> m.effect().removes().contains(in)))
                .orElse(false);
        boolean asked = chassis.mods().stream().anyMatch(m -> opens(m, place));
        return !closed && !out && (!asked || mods.stream().anyMatch(m -> opens(m, place)));
    }

    private static boolean opens(Mod mod, Place place) {
        return mod.effect().opensPlaces().contains(place.id());
    }
}
