package loopwright.catalog.check;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Place;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.ScrewThread;
import loopwright.catalog.read.Problems;

/**
 * A drive has the thread of its form: SFF-8201 gives 2.5-inch drives M3, SFF-8301 gives 3.5-inch drives 6-32 UNC (both
 * from memory); a drive on the board has none. Only a place that takes drives says how one is held.
 */
final class DriveScrewsAreStandard implements Check {

    private static final Set<Place.Holds> DRIVES = Set.of(Place.Holds.D2_5, Place.Holds.D3_5);

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Drive> drive : items.of(Drive.class)) {
            Optional<ScrewThread> has = drive.value().screws().map(Drive.Screwing::thread);
            Optional<ScrewThread> standard = standard(drive.value().form());
            if (has.isPresent() && !has.equals(standard)) {
                problems.add(drive.item()
                        .problem(
                                standard.isPresent() ? "screws.thread" : "screws",
                                standard.isPresent() ? word(has.get()) : "screws",
                                standard.map(DriveScrewsAreStandard::allowed)
                                        .orElse("no screws for a drive on the board"),
                                "A screw that is forced into the other thread falls out later."));
            }
        }
        for (Items.Placed<Chassis> chassis : items.of(Chassis.class)) {
            List<Place> places = chassis.value().inside().places();
            for (int i = 0; i < places.size(); i++) {
                if (places.get(i).drive().isPresent()
                        && places.get(i).holds().stream().noneMatch(DRIVES::contains)) {
                    problems.add(chassis.item()
                            .problem(
                                    "inside.places[" + i + "].drive",
                                    "how a drive is held",
                                    "it only at a place that holds drives",
                                    ""));
                }
            }
        }
    }

    private static Optional<ScrewThread> standard(Drive.DriveForm form) {
        return switch (form) {
            case D2_5 -> Optional.of(ScrewThread.M3);
            case D3_5 -> Optional.of(ScrewThread.UNC_6_32);
            case M2 -> Optional.empty();
        };
    }

    private static String allowed(ScrewThread thread) {
        return thread == ScrewThread.M3
                ? "m3, as SFF-8201 has it for 2.5-inch drives"
                : "6-32, as SFF-8301 has it for 3.5-inch drives";
    }

    private static String word(ScrewThread thread) {
        return switch (thread) {
            case M3 -> "m3";
            case M4 -> "m4";
            case UNC_6_32 -> "6-32";
            case M3_5 -> "m3.5";
            case FAN -> "fan";
        };
    }
}
