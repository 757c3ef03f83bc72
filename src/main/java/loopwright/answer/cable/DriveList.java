package loopwright.answer.cable;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import loopwright.answer.DrivePlaces;
import loopwright.answer.Inspection;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Place;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.Plug;
import loopwright.catalog.part.Screw;
import loopwright.catalog.standard.Cabling;
import loopwright.catalog.standard.Cabling.PlugSize;
import loopwright.power.cable.CableLength;

/**
 * The drives of a build that stand in places, and the places that are left.
 *
 * @param drives in the brief's order
 * @param onBoard ids of those in the board's own sockets
 */
public record DriveList(List<Line> drives, List<String> onBoard, DrivePlaces places) {

    /** Copies. */
    public DriveList {
        drives = List.copyOf(drives);
        onBoard = List.copyOf(onBoard);
    }

    /**
     * A drive in a place.
     *
     * @param madeBy title of the mod that makes the place; absent as delivered
     * @param screwing how it is screwed; absent where drive or place do not say
     * @param heat whether its heat wants moving air
     * @param hum what its disk does
     * @param dataMm length of the data lead it wants from the board; absent where the board does not say from where
     */
    public record Line(
            int number,
            Drive drive,
            Place place,
            Optional<String> madeBy,
            Optional<Screwing> screwing,
            Heat heat,
            Hum hum,
            Optional<Integer> dataMm) {}

    /**
     * How a drive is screwed.
     *
     * @param longestMm longest screw under its head: the sheet, and as deep as the drive allows
     * @param screw the longest of the catalogue that is no longer; absent where none is
     */
    public record Screwing(int screws, double longestMm, double depthMm, Optional<Screw> screw) {}

    /** What a drive's heat asks. */
    public enum Heat {
        /** Still air will do. */
        STILL_AIR_DOES,
        /** It wants moving air. */
        WANTS_MOVING_AIR
    }

    /** What a drive's disk does. */
    public enum Hum {
        /** It has no disk. */
        SILENT,
        /** Soft rings keep its hum from the case. */
        DAMPED,
        /** It hums through the case. */
        NOT_DAMPED,
        /** Drive or place do not say. */
        UNKNOWN
    }

    private static final double HMM_PER_MM = 100;

    /** The drives of a build. */
    public static DriveList of(Inspection inspection) {
        PlugEnds ends = new PlugEnds(inspection);
        Optional<Cabling> cabling = inspection.fitCase().catalog().practice().cabling();
        List<Drive> placed = inspection.fitCase().placedDrives();
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < placed.size(); i++) {
            int number = i + 1;
            Drive drive = placed.get(i);
            ends.place("drive " + number)
                    .ifPresent(place -> lines.add(new Line(
                            number,
                            drive,
                            place,
                            madeBy(inspection, place),
                            cabling.flatMap(c -> screwing(inspection, drive, place, c)),
                            cabling.filter(c -> drive.heatW() >= c.drives().stillAirW())
                                    .map(c -> Heat.WANTS_MOVING_AIR)
                                    .orElse(Heat.STILL_AIR_DOES),
                            hum(drive, place),
                            cabling.flatMap(c -> dataMm(inspection, ends, number, c)))));
        }
        List<Mod> mods = inspection.build().mods().mods(inspection.fitCase().chassis());
        return new DriveList(
                lines,
                inspection.fitCase().drives().stream()
                        .filter(d -> d.form() == Drive.DriveForm.M2)
                        .map(Drive::id)
                        .toList(),
                DrivePlaces.of(inspection.fitCase().chassis(), mods));
    }

    private static Optional<String> madeBy(Inspection inspection, Place place) {
        return inspection.build().mods().mods(inspection.fitCase().chassis()).stream()
                .filter(m -> m.effect().opensPlaces().contains(place.id()))
                .map(Mod::title)
                .findFirst();
    }

    private static Optional<Screwing> screwing(Inspection inspection, Drive drive, Place place, Cabling cabling) {
        if (drive.screws().isEmpty() || place.drive().isEmpty()) {
            return Optional.empty();
        }
        Drive.Screwing has = drive.screws().get();
        double depthMm = has.depthMm().valueHmm() / HMM_PER_MM;
        double longestMm = cabling.drives().sheetMm() + depthMm;
        Optional<Screw> screw = inspection.fitCase().catalog().all(Screw.class).stream()
                .filter(s -> s.thread() == has.thread()
                        && s.head() == Screw.Head.PAN
                        && s.lengthMm().valueHmm() / HMM_PER_MM <= longestMm)
                .max(Comparator.comparingInt((Screw s) -> s.lengthMm().valueHmm())
                        .thenComparing(Screw::id, Comparator.reverseOrder()));
        return Optional.of(new Screwing(cabling.drives().screws(), longestMm, depthMm, screw));
    }

    private static Hum hum(Drive drive, Place place) {
        if (drive.screws().isEmpty() || place.drive().isEmpty()) {
            return Hum.UNKNOWN;
        }
        if (!drive.screws().get().spins()) {
            return Hum.SILENT;
        }
        return place.drive().get().damped() ? Hum.DAMPED : Hum.NOT_DAMPED;
    }

    private static Optional<Integer> dataMm(Inspection inspection, PlugEnds ends, int number, Cabling cabling) {
        Optional<PlugEnd> from = ends.driveSockets();
        Optional<PlugEnd> to = ends.wanted().stream()
                .filter(e -> e.name().equals("drive " + number))
                .findFirst();
        Optional<PlugSize> size = cabling.find(Plug.SATA);
        if (from.isEmpty() || to.isEmpty() || size.isEmpty()) {
            return Optional.empty();
        }
        WaysInside.Found way = new WaysInside(inspection, cabling)
                .among(size.get(), List.of(from.get(), to.get()))
                .find(0, 1);
        return Optional.of(CableLength.fromSupplyMm(way.lengthHmm(), size.get(), cabling.way()));
    }
}
