package loopwright.workshop.schedule;

import java.util.Optional;
import java.util.Set;
import loopwright.catalog.standard.WorkStage;

/**
 * A task of the workshop.
 *
 * @param id stage, and the mod or painted part where there is one: {@code cut:front-open}
 * @param title what the builder calls it
 * @param handsMin hands-on minutes
 * @param parts panels or pieces it is done on
 * @param mod the mod it belongs to
 * @param loose whether what it is done on is off the machine
 */
public record WorkTask(
        String id,
        WorkStage stage,
        String title,
        int handsMin,
        Set<String> parts,
        Optional<String> mod,
        boolean loose) {

    /** Copies. */
    public WorkTask {
        parts = Set.copyOf(parts);
    }

    /** Whether it must not be left over night. */
    boolean unbroken() {
        return switch (stage) {
            case PRIME, COLOUR, CLEAR, AIR_TEST, FILL, HANDOVER -> true;
            default -> false;
        };
    }

    /** Steps of the clock, begun ones counted whole. */
    int steps() {
        return (handsMin + Clock.STEP_MIN - 1) / Clock.STEP_MIN;
    }
}
