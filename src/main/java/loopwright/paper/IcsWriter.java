package loopwright.paper;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import loopwright.catalog.standard.WorkStage;
import loopwright.workshop.money.OrderList;
import loopwright.workshop.schedule.Schedule;
import loopwright.workshop.schedule.StageWords;

/**
 * A schedule as a calendar file, RFC 5545: tasks in floating local time, order days as whole days.
 *
 * <p>UIDs come from the build's key, the task and the start; DTSTAMP is the schedule's first day at midnight, so the same answer
 * gives the same bytes. Lines end in CRLF and are folded after 75 octets, never inside a character.
 */
public final class IcsWriter {

    /** Octets of a line without its break, RFC 5545 section 3.1. */
    private static final int OCTETS = 75;

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss", Locale.ROOT);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyyMMdd", Locale.ROOT);

    private final PrintWriter out;

    /** Writes to a writer that is UTF-8. */
    public IcsWriter(PrintWriter out) {
        this.out = out;
    }

    /**
     * The whole file.
     *
     * @param key of the build, part of each UID
     */
    public void write(String key, Schedule schedule, OrderList orders) {
        line("BEGIN:VCALENDAR");
        line("VERSION:2.0");
        line("PRODID:-//Loopwright//schedule//EN");
        String stamp = schedule.start().format(DAY) + "T000000Z";
        for (OrderList.Line order : orders.lines()) {
            LocalDate day = order.late() ? schedule.start() : order.orderBy();
            begin("order-" + order.role().replace(' ', '-') + "-" + order.part().id(), key, stamp);
            line("DTSTART;VALUE=DATE:" + day.format(DAY));
            line("DTEND;VALUE=DATE:" + day.plusDays(1).format(DAY));
            line("SUMMARY:"
                    + text("order " + order.quantity().toPlainString() + " "
                            + (order.unit().equals("piece") ? "" : order.unit() + " ")
                            + order.part().id()));
            line("DESCRIPTION:"
                    + text("For " + order.role() + ", needed " + order.need() + ", lead time " + order.leadDays()
                            + " days; at the latest " + order.latest() + "."));
            line("END:VEVENT");
        }
        for (Schedule.Row row : schedule.rows()) {
            if (row.task().stage() != WorkStage.CURE && row.task().handsMin() > 0) {
                event(row, key, stamp);
            }
        }
        line("END:VCALENDAR");
        out.flush();
    }

    private void event(Schedule.Row row, String key, String stamp) {
        begin(row.task().id().replace(':', '-'), key, stamp);
        line("DTSTART:" + time(row.begin()));
        line("DTEND:" + time(row.end()));
        line("SUMMARY:" + text(row.task().title()));
        String caution = StageWords.caution(row.task().stage());
        line("DESCRIPTION:"
                + text(row.task().handsMin() + " min hands-on."
                        + (row.critical() ? " On the way to the end." : "")
                        + (caution.isEmpty() ? "" : "\nCare: " + caution)));
        line("END:VEVENT");
    }

    private void begin(String name, String key, String stamp) {
        line("BEGIN:VEVENT");
        line("UID:" + name + "-" + stamp.substring(0, 8) + "@" + key + ".loopwright.invalid");
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
