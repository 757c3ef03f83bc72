package loopwright.workshop.schedule;

import java.time.LocalDate;
import java.util.Set;

/**
 * What a schedule is asked for.
 *
 * @param start the day on which parts are ordered and work may begin
 * @param late ids of mods that are decided only after the build
 * @param nodes of the search before the best so far is taken
 */
public record ScheduleWish(LocalDate start, Set<String> late, long nodes) {

    /** Copies. */
    public ScheduleWish {
        late = Set.copyOf(late);
    }

    /** From a day on, everything decided before the build. */
    public static ScheduleWish from(LocalDate start) {
        return new ScheduleWish(start, Set.of(), Handwork.NODES);
    }
}
