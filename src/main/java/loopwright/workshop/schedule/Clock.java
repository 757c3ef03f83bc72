package loopwright.workshop.schedule;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * Working time and the calendar: which moment a step of working time is, and when work can go on after a wait.
 *
 * <p><b>Unit.</b> Working time is counted in steps of {@value #STEP_MIN} minutes from the first working day's start, nights
 * and days off left out; waits are minutes of the calendar and run through both.
 *
 * <p>A step is a start ({@link #begin}: the moment it starts) or an end (the moment the step before it ended): the last end of
 * a day is not the first start of the next. All conversions grow with what they are given.
 */
public final class Clock {

    /** Minutes in a step. */
    public static final int STEP_MIN = 5;

    private static final int DAY_MIN = 24 * 60;

    /** Working days that are looked ahead: more than two years. */
    private static final int DAYS = 600;

    private final int daySteps;
    private final LocalDate first;
    private final int[] dayStartMin = new int[DAYS];

    /**
     * A clock.
     *
     * @param first the first day, worked or not
     * @param works which days are worked
     * @param startMin when a working day starts, minutes after midnight
     * @param dayMin how long it is, whole steps of it are used; a day that would pass midnight starts earlier
     */
    public Clock(LocalDate first, Predicate<LocalDate> works, int startMin, int dayMin) {
        if (!(dayMin >= STEP_MIN && dayMin <= DAY_MIN)) {
            throw new IllegalArgumentException("a working day must be 5 to 1440 minutes but was " + dayMin);
        }
        this.first = first;
        this.daySteps = dayMin / STEP_MIN;
        int opens = Math.min(startMin, DAY_MIN - daySteps * STEP_MIN);
        int worked = 0;
        for (int day = 0; worked < DAYS; day++) {
            if (works.test(first.plusDays(day))) {
                dayStartMin[worked] = day * DAY_MIN + opens;
                worked++;
            } else if (day > 20 * DAYS) {
                throw new IllegalArgumentException("no day is worked");
            }
        }
    }

    /** A clock without nights: working time is time. */
    public static Clock withoutNights() {
        return new Clock(LocalDate.EPOCH, day -> true, 0, DAY_MIN);
    }

    /** Steps in a working day. */
    public int daySteps() {
        return daySteps;
    }

    /** The last step that can be told. */
    int horizon() {
        return DAYS * daySteps - 1;
    }

    /** When a step begins. */
    public LocalDateTime begin(int step) {
        return first.atStartOfDay().plusMinutes(beginMin(step));
    }

    /** When work that reaches up to a step ends. */
    public LocalDateTime end(int step) {
        return first.atStartOfDay().plusMinutes(endMin(step));
    }

    private int beginMin(int step) {
        return dayStartMin[step / daySteps] + step % daySteps * STEP_MIN;
    }

    private int endMin(int step) {
        return step == 0 ? beginMin(0) : beginMin(step - 1) + STEP_MIN;
    }

    /**
     * The first step at which a part may be used that comes so many days after the first: parcels come during the day, so it
     * is the next start of work after that day; with 0 days it is there already.
     */
    public int arrival(int days) {
        return days == 0 ? 0 : firstAt((days + 1) * DAY_MIN);
    }

    /** Work of one day. */
    public record Piece(LocalDateTime begin, LocalDateTime end) {}

    /** Work from a step on, day by day. */
    public List<Piece> pieces(int start, int steps) {
        List<Piece> out = new ArrayList<>();
        int until = start + steps;
        for (int at = start; at < until; at = (at / daySteps + 1) * daySteps) {
            out.add(new Piece(begin(at), end(Math.min(until, (at / daySteps + 1) * daySteps))));
        }
        return List.copyOf(out);
    }

    private int firstAt(int min) {
        int low = 0;
        int high = horizon();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (beginMin(middle) >= min) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    /** The first step at which work may begin, some minutes after work that reached up to a step. */
    public int after(int end, int waitMin) {
        return waitMin == 0 ? end : Math.max(end, firstAt(endMin(end) + waitMin));
    }

    /** The last step up to which work may reach so that, after the wait, other work begins at a step; below 0: none. */
    public int before(int start, int waitMin) {
        int low = -1;
        int high = start;
        while (low < high) {
            int middle = (low + high + 1) >> 1;
            if (after(middle, waitMin) <= start) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /** The first start at or after a step: what must not be broken by a night waits for the next day. */
    public int fit(int start, Job job) {
        boolean breaks = job.unbroken() && job.steps() <= daySteps && start % daySteps + job.steps() > daySteps;
        return breaks ? (start / daySteps + 1) * daySteps : start;
    }

    /** The last start at or before a step. */
    public int fitBack(int start, Job job) {
        boolean breaks =
                start >= 0 && job.unbroken() && job.steps() <= daySteps && start % daySteps + job.steps() > daySteps;
        return breaks ? start - (start % daySteps + job.steps() - daySteps) : start;
    }
}
