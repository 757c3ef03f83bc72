package loopwright.workshop.schedule;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import loopwright.catalog.standard.WorkStage;
import loopwright.workshop.finish.CoatPlan;
import loopwright.workshop.finish.CoatPlan.Coat;

/**
 * A task of the workshop.
 *
 * @param id stage, and the mod or painted part where there is one: {@code cut:front-open}
 * @param title what the builder calls it
 * @param parts panels or pieces it is done on
 * @param mod the mod it belongs to
 * @param loose whether what it is done on is off the machine
 */
public record WorkTask(
        String id, WorkStage stage, String title, Taken taken, Set<String> parts, Optional<String> mod, boolean loose) {

    /**
     * What it takes.
     *
     * @param handsMin hands-on minutes that the build's price counts
     * @param coats what is sprayed, in order
     * @param restMin minutes that have to pass after it, through nights and days off, before what rests on it
     */
    public record Taken(int handsMin, List<Coat> coats, int restMin) {
        /** Copies. */
        public Taken {
            coats = List.copyOf(coats);
        }
    }

    /** Copies. */
    public WorkTask {
        parts = Set.copyOf(parts);
    }

    /** Hands-on minutes that the build's price counts. */
    public int handsMin() {
        return taken.handsMin();
    }

    /** Minutes in which it keeps the hands: hands-on, and standing by while coats flash. */
    public int busyMin() {
        return taken.handsMin() + CoatPlan.flashMin(taken.coats());
    }

    /** Whether it must not be left over night. */
    boolean unbroken() {
        return switch (stage) {
            case TEST_PIECE, PRIME, COLOUR, CLEAR, AIR_TEST, FILL, HANDOVER -> true;
            default -> false;
        };
    }

    /** Steps of the clock, begun ones counted whole. */
    int steps() {
        return (busyMin() + Clock.STEP_MIN - 1) / Clock.STEP_MIN;
    }
}
