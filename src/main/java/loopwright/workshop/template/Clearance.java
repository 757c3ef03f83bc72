package loopwright.workshop.template;

import java.util.Optional;
import loopwright.catalog.part.ScrewThread;
import loopwright.catalog.standard.Standards;
import loopwright.quantity.Hundredths;

/** Clearance holes, class medium of ISO 273, from the standards. */
final class Clearance {

    /** What is drilled for a screw that nobody knows yet: it lets all three threads of the trade through. */
    private static final ScrewThread ANY = ScrewThread.M4;

    private Clearance() {}

    /**
     * The diameter of the hole, hundredths of a millimetre.
     *
     * @throws IllegalArgumentException if the standards lack the thread
     */
    static int holeHmm(Standards standards, Optional<ScrewThread> thread) {
        ScrewThread asked = thread.orElse(ANY);
        double mm = standards.threads().stream()
                .filter(t -> t.thread() == asked)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("standards.yaml has no thread " + words(asked)))
                .clearanceMediumMm();
        return (int) Math.round(mm * Hundredths.PER_MM);
    }

    /** A thread as it is written. */
    static String words(ScrewThread thread) {
        return switch (thread) {
            case M3 -> "M3";
            case M4 -> "M4";
            case UNC_6_32 -> "#6-32";
            case M3_5 -> "M3.5";
            case FAN -> "fan screw";
        };
    }

    /** What a hole is for. */
    static String words(Optional<ScrewThread> thread) {
        return thread.map(t -> words(t) + " clear").orElse("screw not chosen: M4 clear");
    }
}
