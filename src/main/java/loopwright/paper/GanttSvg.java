package loopwright.paper;

import java.io.PrintWriter;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loopwright.workshop.schedule.Clock;
import loopwright.workshop.schedule.Schedule;

/**
 * A schedule as a picture: a line a task, days from left to right, days without work shaded, waits thin, what the end hangs on
 * dark. A long name takes more lines; none is cut.
 *
 * <p>Units of the picture: a day is {@value #DAY} wide. It needs no style of the page it is put in, and no colour to be read.
 */
public final class GanttSvg {

    private static final int DAY = 26;
    private static final int LINE = 18;

    /** From one line of a name to the next. */
    private static final int WRAPPED = 13;

    private static final int NAMES = 330;
    private static final int TOP = 40;

    /** Characters of a bold name that fit beside the days. */
    private static final int FITS = 50;

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
        int height = TOP + 10;
        for (Schedule.Row row : schedule.rows()) {
            height += tall(row);
        }
        out.println("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + width + " " + height
                + "\" font-family=\"sans-serif\" font-size=\"11\" role=\"img\">");
        out.println("<title>"
                + xml("Schedule from " + schedule.start() + " to "
                        + schedule.finish().at().toLocalDate()) + "</title>");
        for (long day = 0; day < days; day++) {
            shade(out, day, height);
        }
        for (long day = 0; day <= days; day++) {
            grid(out, day, days, height);
        }
        int y = TOP;
        for (Schedule.Row row : schedule.rows()) {
            row(out, row, y);
            y += tall(row);
        }
        out.println("</svg>");
        out.flush();
    }

    private static int tall(Schedule.Row row) {
        return LINE + (wrapped(row.task().title()).size() - 1) * WRAPPED;
    }

    private void shade(PrintWriter out, long day, int height) {
        if (!schedule.calendar().isWorkingDay(schedule.start().plusDays(day))) {
            rectangle(out, (double) NAMES + day * DAY, TOP - 6, DAY, height - TOP, "#e6e6e6", "none", "no work");
        }
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
        List<String> name = wrapped(row.task().title());
        for (int i = 0; i < name.size(); i++) {
            text(out, 4, y + 12 + i * WRAPPED, name.get(i), row.critical() ? "bold" : "normal");
        }
        int restMin = row.task().taken().restMin();
        if (restMin > 0) {
            LocalDateTime until = row.end().plusMinutes(restMin);
            LocalDateTime drawn = until.isBefore(schedule.finish().at())
                    ? until
                    : schedule.finish().at();
            line(out, x(row.end()), y + 8, x(drawn), y + 8, "#555", 3);
        }
        for (Clock.Piece piece : row.pieces()) {
            double from = x(piece.begin());
            rectangle(
                    out,
                    from,
                    y + 3,
                    Math.max(2, x(piece.end()) - from),
                    11,
                    row.critical() ? "#222" : "#bbb",
                    "#222",
                    row.task().title() + ", " + row.task().busyMin() + " min, from " + piece.begin());
        }
    }

    /** A name in lines that fit. */
    static List<String> wrapped(String name) {
        List<String> out = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : name.split(" ")) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > FITS) {
                out.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        out.add(line.toString());
        return List.copyOf(out);
    }

    private double x(LocalDateTime at) {
        return NAMES + Duration.between(schedule.start().atStartOfDay(), at).toMinutes() / MIN_PER_DAY * DAY;
    }

    private static void rectangle(
            PrintWriter out, double x, double y, double wide, double high, String fill, String edge, String says) {
        out.println(String.format(
                Locale.ROOT,
                "<rect x=\"%.1f\" y=\"%.0f\" width=\"%.1f\" height=\"%.0f\" fill=\"%s\" stroke=\"%s\"><title>%s</title></rect>",
                x,
                y,
                wide,
                high,
                fill,
                edge,
                xml(says)));
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
                Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\" font-weight=\"%s\">%s</text>", x, y, weight, xml(text)));
    }

    private static String xml(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
