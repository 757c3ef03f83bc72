package loopwright.paper;

import java.io.PrintWriter;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import loopwright.catalog.standard.WorkStage;
import loopwright.workshop.schedule.Schedule;

/**
 * A schedule as a picture: a line a task, days from left to right, waits thin, what the end hangs on dark.
 *
 * <p>Units of the picture: a day is {@value #DAY} wide. It needs no style of the page it is put in, and no colour to be read.
 */
public final class GanttSvg {

    private static final int DAY = 26;
    private static final int LINE = 18;
    private static final int NAMES = 330;
    private static final int TOP = 40;

    /** Width of a date. */
    private static final int DATE = 70;

    private static final double MIN_PER_DAY = 24 * 60;

    private final Schedule schedule;

    /** A picture of a schedule. */
    public GanttSvg(Schedule schedule) {
        this.schedule = schedule;
    }

    /** Writes one {@code svg} element. */
    public void write(PrintWriter out) {
        long days = Duration.between(
                                schedule.start().atStartOfDay(),
                                schedule.finish().at())
                        .toDays()
                + 1;
        long width = NAMES + days * DAY + 10;
        List<Schedule.Row> rows = schedule.rows();
        int height = TOP + rows.size() * LINE + 10;
        out.println("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + width + " " + height
                + "\" font-family=\"sans-serif\" font-size=\"11\" role=\"img\">");
        out.println("<title>"
                + xml("Schedule from " + schedule.start() + " to "
                        + schedule.finish().at().toLocalDate()) + "</title>");
        for (long day = 0; day <= days; day++) {
            grid(out, day, days, height);
        }
        for (int i = 0; i < rows.size(); i++) {
            row(out, rows.get(i), TOP + i * LINE);
        }
        out.println("</svg>");
        out.flush();
    }

    private void grid(PrintWriter out, long day, long days, int height) {
        LocalDate date = schedule.start().plusDays(day);
        double x = NAMES + day * DAY;
        boolean monday = date.getDayOfWeek().getValue() == 1;
        line(out, x, TOP - 6, x, height - 6, monday ? "#999" : "#ddd", 1);
        int toMonday = 8 - schedule.start().getDayOfWeek().getValue();
        boolean first = day == 0 && toMonday * DAY >= DATE;
        if ((monday || first) && (days - day) * DAY >= DATE) {
            text(out, x + 2, TOP - 12, date.toString(), "normal");
        }
    }

    private void row(PrintWriter out, Schedule.Row row, int y) {
        text(out, 4, y + 12, row.task().title(), row.critical() ? "bold" : "normal");
        double from = x(row.begin());
        double wide = Math.max(2, x(row.end()) - from);
        boolean cure = row.task().stage() == WorkStage.CURE;
        if (cure) {
            double until = x(untilAssembly(row));
            line(out, from, y + 8, until, y + 8, "#555", 3);
        } else {
            out.println(String.format(
                    Locale.ROOT,
                    "<rect x=\"%.1f\" y=\"%d\" width=\"%.1f\" height=\"11\" fill=\"%s\" stroke=\"#222\"><title>%s</title></rect>",
                    from,
                    y + 3,
                    wide,
                    row.critical() ? "#222" : "#bbb",
                    xml(row.task().title() + ", " + row.task().handsMin() + " min, from " + row.begin())));
        }
    }

    /** How long a cure may take: to the first task after it. */
    private LocalDateTime untilAssembly(Schedule.Row cure) {
        String next = schedule.plan().before().stream()
                .filter(b -> b.first().equals(cure.task().id()))
                .map(b -> b.then())
                .findFirst()
                .orElse(cure.task().id());
        int waitMin = schedule.plan().before().stream()
                .filter(b -> b.first().equals(cure.task().id()))
                .mapToInt(b -> b.waitMin())
                .max()
                .orElse(0);
        LocalDateTime hard = cure.end().plusMinutes(waitMin);
        LocalDateTime begins = schedule.find(next).map(Schedule.Row::begin).orElse(hard);
        return hard.isBefore(begins) ? hard : begins;
    }

    private double x(LocalDateTime at) {
        return NAMES + Duration.between(schedule.start().atStartOfDay(), at).toMinutes() / MIN_PER_DAY * DAY;
    }

    private static void line(PrintWriter out, double x1, double y1, double x2, double y2, String colour, int width) {
        out.println(String.format(
                Locale.ROOT,
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\" stroke-width=\"%d\"/>",
                x1,
                y1,
                x2,
                y2,
                colour,
                width));
    }

    private static void text(PrintWriter out, double x, double y, String text, String weight) {
        out.println(String.format(
                Locale.ROOT,
                "<text x=\"%.1f\" y=\"%.1f\" font-weight=\"%s\">%s</text>",
                x,
                y,
                weight,
                xml(text.length() > 56 ? text.substring(0, 54) + ".." : text)));
    }

    private static String xml(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
