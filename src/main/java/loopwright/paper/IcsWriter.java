package loopwright.paper;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import loopwright.workshop.money.OrderList;
import loopwright.workshop.schedule.Schedule;
import loopwright.workshop.schedule.StageWords;

/**
 * A schedule as a calendar file, RFC 5545: an event for each day's piece of a task in floating local time, waits as transparent
 * events, order days as whole days.
 *
 * <p>UIDs come from the job, the task, the piece and the start; DTSTAMP is the schedule's first day at midnight, so the same answer
 * gives the same bytes. Lines end in CRLF and are folded after 75 octets, never inside a character.
 */
public final class IcsWriter {

    /** Octets of a line without its break, RFC 5545 section 3.1. */
    private static final int OCTETS = 75;

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss", Locale.ROOT);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyyMMdd", Locale.ROOT);

    private final PrintWriter out;
    private final Job job;

    /** What the calendar is of: the brief's id and the build's key stand in each summary and in each UID. */
    public record Job(String brief, String key) {}

    /** Writes to a writer that is UTF-8. */
    public IcsWriter(PrintWriter out, Job job) {
        this.out = out;
        this.job = job;
    }

    /** The whole file. */
    public void write(Schedule schedule, OrderList orders) {
        line("BEGIN:VCALENDAR");
        line("VERSION:2.0");
        line("PRODID:-//Loopwright//schedule//EN");
        String stamp = schedule.start().format(DAY) + "T000000Z";
        for (OrderList.Line order : orders.lines()) {
            order(order, order.late() ? schedule.firstOrderDay() : order.orderBy(), stamp);
        }
        for (Schedule.Row row : schedule.rows()) {
            task(row, stamp);
            rest(row, stamp);
        }
        line("END:VCALENDAR");
        out.flush();
    }

    private void order(OrderList.Line order, LocalDate day, String stamp) {
        begin("order-" + order.role().replace(' ', '-') + "-" + order.part().id(), stamp);
        line("DTSTART;VALUE=DATE:" + day.format(DAY));
        line("DTEND;VALUE=DATE:" + day.plusDays(1).format(DAY));
        summary("order " + order.quantity().toPlainString() + " "
                + (order.unit().equals("piece") ? "" : order.unit() + " ")
                + order.part().id());
        line("DESCRIPTION:"
                + text("For " + order.role() + ", needed " + order.need() + ", lead time " + order.leadDays()
                        + " days; at the latest " + order.latest() + "."));
        line("TRANSP:TRANSPARENT");
        line("END:VEVENT");
    }

    private void task(Schedule.Row row, String stamp) {
        int pieces = row.pieces().size();
        for (int i = 0; i < pieces; i++) {
            begin(name(row) + (pieces > 1 ? "-" + (i + 1) : ""), stamp);
            line("DTSTART:" + time(row.pieces().get(i).begin()));
            line("DTEND:" + time(row.pieces().get(i).end()));
            summary(row.task().title() + (pieces > 1 ? ", " + (i + 1) + " of " + pieces : ""));
            String caution = StageWords.caution(row.task().stage());
            line("DESCRIPTION:"
                    + text(row.task().busyMin() + " min hands-on" + (pieces > 1 ? " in all." : ".")
                            + (row.critical() ? " The end hangs on it." : "")
                            + (caution.isEmpty() ? "" : "\nCare: " + caution)));
            line("TRANSP:OPAQUE");
            line("END:VEVENT");
        }
    }

    private void rest(Schedule.Row row, String stamp) {
        int restMin = row.task().taken().restMin();
        if (restMin > 0) {
            begin(name(row) + "-wait", stamp);
            line("DTSTART:" + time(row.end()));
            line("DTEND:" + time(row.end().plusMinutes(restMin)));
            summary("wait: " + StageWords.rest(row.task().stage()) + " ("
                    + row.task().title() + ")");
            line("TRANSP:TRANSPARENT");
            line("END:VEVENT");
        }
    }

    private static String name(Schedule.Row row) {
        return row.task().id().replace(':', '-').replace('+', '-');
    }

    private void summary(String what) {
        line("SUMMARY:" + text(job.brief() + " " + job.key() + ": " + what));
    }

    private void begin(String name, String stamp) {
        line("BEGIN:VEVENT");
        line("UID:" + name + "-" + stamp.substring(0, 8) + "@" + job.key() + "." + job.brief() + ".loopwright.invalid");
        line("DTSTAMP:" + stamp);
    }

    private static String time(LocalDateTime at) {
        return at.format(TIME);
    }

    /** A text value: backslash first, then what separates values, then breaks. */
    static String text(String plain) {
        return plain.replace("\\", "\\\\")
                .replace(";", "\\;")
                .replace(",", "\\,")
                .replace("\r\n", "\\n")
                .replace("\n", "\\n");
    }

    private void line(String content) {
        out.print(folded(content));
        out.print("\r\n");
    }

    /** Folded so that no line has more than 75 octets; the space that starts a continuation counts. */
    static String folded(String content) {
        StringBuilder folded = new StringBuilder();
        int octets = 0;
        for (int at = 0; at < content.length(); ) {
            int point = content.codePointAt(at);
            String one = new String(Character.toChars(point));
            int more = one.getBytes(StandardCharsets.UTF_8).length;
            if (octets + more > OCTETS) {
                folded.append("\r\n ");
                octets = 1;
            }
            folded.append(one);
            octets += more;
            at += Character.charCount(point);
        }
        return folded.toString();
    }
}
