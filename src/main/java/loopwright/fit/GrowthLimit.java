package loopwright.fit;

import java.util.Optional;
import java.util.OptionalInt;
import loopwright.catalog.chassis.Shell;

/**
 * How far a body can grow: the largest growth up to which it stands at every hundredth, stacks sliding to suit.
 *
 * <p>Exact: if the hull of all sizes between two stands, all of them do; where it does not, the sizes are halved, down
 * to single hundredths.
 */
final class GrowthLimit {

    private final Surroundings surroundings;
    private final Growing growing;
    private final int limitHmm;
    private final Shell.Interior interior;

    /** Growth by more than the interior measures is growth without end. */
    GrowthLimit(Surroundings surroundings, Growing growing, Shell.Interior interior) {
        this.surroundings = surroundings;
        this.growing = growing;
        this.interior = interior;
        this.limitHmm = MountFrame.interior(interior, growing.axis()).valueHmm();
    }

    /** Whether it stands with a certain growth. */
    boolean standsAt(int growthHmm) {
        return stands(growthHmm, growthHmm);
    }

    /** The largest growth, given that it stands with none; empty where nothing stops it. */
    OptionalInt most() {
        int bad = firstBad(0, limitHmm);
        return bad > limitHmm ? OptionalInt.empty() : OptionalInt.of(bad - 1);
    }

    /** What stops it. */
    Blocker blocker() {
        return new Blocker(surroundings, growing, interior);
    }

    /** The first growth from one to another with which it does not stand, or the one after them. */
    private int firstBad(int from, int to) {
        if (stands(from, to)) {
            return to + 1;
        }
        if (from == to) {
            return from;
        }
        int middle = from + (to - from) / 2;
        int bad = firstBad(from, middle);
        return bad <= middle ? bad : firstBad(middle + 1, to);
    }

    private boolean stands(int from, int to) {
        return surroundings.admit(growing.forms(from, to, Optional.empty()));
    }
}
