package loopwright.plumbing;

import java.util.List;
import java.util.Optional;
import loopwright.plumbing.route.Route;

/**
 * One run of tube.
 *
 * @param route its way; absent where it is blocked
 * @param blockedBy what blocks it; empty where it is not
 * @param lengthHmm of tube, rounded up; where it is blocked, along the axes from port to port
 */
public record PlannedRun(Port from, Port to, Optional<Route> route, List<String> blockedBy, int lengthHmm) {

    /** Copies. */
    public PlannedRun {
        blockedBy = List.copyOf(blockedBy);
    }

    /** Bends from which on soft tube is hard to lay and rigid tube hard to make; assumed, no source. */
    private static final int MANY_BENDS = 5;

    /** Whether it has a way, but one that a builder would rather not have. */
    public boolean isHard() {
        return bends() >= MANY_BENDS;
    }

    /** What it is called. */
    public String name() {
        return from.part() + " to " + to.part();
    }

    /** How many elbows it has. */
    public int elbows() {
        return route.map(Route::elbows).orElse(0);
    }

    /** How many bends its tube makes. */
    public int bends() {
        return route.map(Route::bends).orElse(0);
    }
}
