package loopwright.workshop.fasten;

import loopwright.catalog.standard.Standards.ThreadRow;
import loopwright.quantity.Hundredths;

/** What happens when a screw goes into a thread that is not its own; by outside diameter, tap drill and pitch. */
public enum ThreadMix {
    /** It is its own. */
    SAME("fits"),
    /** It goes in without touching. */
    FALLS_THROUGH("falls through"),
    /** It catches a thread or two, wobbles, and falls out later. */
    WOBBLES("wobbles, holds by a thread or two and falls out later"),
    /** It starts, then stops after a turn or so. */
    BINDS("starts, then stops after a turn: do not force it"),
    /** It does not go in. */
    DOES_NOT_ENTER("does not go in");

    /** Diameters nearer than this start in each other, mm; common practice, no source. */
    private static final double ALIKE_MM = 0.1;

    private final String words;

    ThreadMix(String words) {
        this.words = words;
    }

    /** In words. */
    public String words() {
        return words;
    }

    /** Whether it can be taken for the right one. */
    public boolean isTreacherous() {
        return this == WOBBLES || this == BINDS;
    }

    /** A screw of one thread in a hole of another. */
    public static ThreadMix of(ThreadRow screw, ThreadRow hole) {
        if (screw.thread() == hole.thread()) {
            return SAME;
        }
        double more = screw.outsideMm() - hole.outsideMm();
        if (Math.abs(more) <= ALIKE_MM) {
            return BINDS;
        }
        if (more > 0) {
            return DOES_NOT_ENTER;
        }
        return screw.outsideMm() > hole.tapDrillMm() ? WOBBLES : FALLS_THROUGH;
    }

    /** Whether a screw goes through a plain hole. */
    public static boolean passes(ThreadRow screw, int holeHmm) {
        return screw.outsideMm() * Hundredths.PER_MM < holeHmm;
    }
}
