package loopwright.catalog.brief;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
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

    private static final List<DayOfWeek> WEEKEND = List.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY);

    /** Refuses dates that are none, and a week without a working day. */
    public WorkCalendar {
        daysOff = List.copyOf(daysOff);
        holidays = List.copyOf(holidays);
        start.ifPresent(text -> dateOf("start", text));
        holidays.forEach(text -> dateOf("holidays", text));
        if (daysOff.stream().distinct().count() == DayOfWeek.values().length) {
            throw new IllegalArgumentException("days_off that leave a day to work on");
        }
    }

    private static LocalDate dateOf(String field, String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(field + " as YYYY-MM-DD, not " + text, e);
        }
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
