package loopwright.catalog.brief;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The days that the workshop works on this job.
 *
 * @param start the day on which parts are ordered and work may begin, {@code YYYY-MM-DD}
 * @param daysOff days of the week without work; left out, Saturday and Sunday
 * @param holidays single days without work, {@code YYYY-MM-DD}
 */
public record WorkCalendar(Optional<String> start, List<DayOfWeek> daysOff, List<String> holidays) {

    /** Monday to Friday, whenever the builder starts. */
    public static final WorkCalendar USUAL = new WorkCalendar(Optional.empty(), List.of(), List.of());

    /** Before this day no work begins; ours: far before any job. */
    public static final LocalDate FIRST_DAY = LocalDate.of(2000, 1, 1);

    /** After this day no work begins; ours: far after any job. */
    public static final LocalDate LAST_DAY = LocalDate.of(2199, 12, 31);

    private static final List<DayOfWeek> WEEKEND = List.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY);

    /** Refuses dates that are none, and a week without a working day. */
    public WorkCalendar {
        daysOff = List.copyOf(daysOff);
        holidays = List.copyOf(holidays);
        List<String> wrong = new ArrayList<>();
        start.filter(text -> findDay(text).isEmpty()).ifPresent(text -> wrong.add("start as YYYY-MM-DD, not " + text));
        holidays.stream()
                .filter(text -> findDay(text).isEmpty())
                .forEach(text -> wrong.add("holidays as YYYY-MM-DD, not " + text));
        start.flatMap(WorkCalendar::findDay)
                .filter(day -> !isPlanned(day))
                .ifPresent(day -> wrong.add("start from " + FIRST_DAY + " to " + LAST_DAY + ", not " + day));
        if (!wrong.isEmpty()) {
            throw new IllegalArgumentException(String.join("; ", wrong));
        }
        if (daysOff.stream().distinct().count() == DayOfWeek.values().length) {
            throw new IllegalArgumentException("days_off that leave a day to work on");
        }
    }

    /** The day that a text like 2027-01-11 says. */
    public static Optional<LocalDate> findDay(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** Whether work may begin on a day: others are taken for slips. */
    public static boolean isPlanned(LocalDate day) {
        return !day.isBefore(FIRST_DAY) && !day.isAfter(LAST_DAY);
    }

    /** The day on which work may begin, if the brief says. */
    public Optional<LocalDate> startDay() {
        return start.map(LocalDate::parse);
    }

    /** Whether there is work on a day. */
    public boolean isWorkingDay(LocalDate day) {
        List<DayOfWeek> off = daysOff.isEmpty() ? WEEKEND : daysOff;
        return !off.contains(day.getDayOfWeek()) && !holidays.contains(day.toString());
    }

    /** The working day on a day, or the next one before it. */
    public LocalDate onOrBefore(LocalDate day) {
        LocalDate at = day;
        while (!isWorkingDay(at)) {
            at = at.minusDays(1);
        }
        return at;
    }

    /** The working day on a day, or the next one after it. */
    public LocalDate onOrAfter(LocalDate day) {
        LocalDate at = day;
        while (!isWorkingDay(at)) {
            at = at.plusDays(1);
        }
        return at;
    }
}
