package loopwright.paper.book;

import java.util.List;
import loopwright.paper.Passages;

/** Pieces of a page; every text is escaped here and nowhere else. */
final class Html {

    private final StringBuilder out = new StringBuilder();

    /** A text as a page may hold it. */
    static String escaped(String text) {
        StringBuilder out = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> out.append(c < ' ' && c != '\n' ? ' ' : c);
            }
        }
        return out.toString();
    }

    /** A heading of a section that can be linked to. */
    Html section(String id, String title) {
        out.append("<h2 id=\"").append(id).append("\">").append(escaped(title)).append("</h2>\n");
        return this;
    }

    /** The first line of a part of the book, on a new page of paper. */
    Html part(String title) {
        out.append("<p class=\"part\">").append(escaped(title)).append("</p>\n");
        return this;
    }

    /** A smaller heading. */
    Html heading(String title) {
        out.append("<h3>").append(escaped(title)).append("</h3>\n");
        return this;
    }

    /** A paragraph. */
    Html text(String text) {
        out.append("<p>").append(escaped(text)).append("</p>\n");
        return this;
    }

    /** A paragraph that must not be overlooked. */
    Html caution(String text) {
        out.append("<p class=\"caution\">").append(escaped(text)).append("</p>\n");
        return this;
    }

    /** A list; nothing where there is nothing in it. */
    Html list(List<String> items) {
        if (!items.isEmpty()) {
            out.append("<ul>\n");
            items.forEach(i -> out.append("<li>").append(escaped(i)).append("</li>\n"));
            out.append("</ul>\n");
        }
        return this;
    }

    /** Boxes to tick. */
    Html ticks(List<String> items) {
        out.append("<ul class=\"ticks\">\n");
        items.forEach(i -> out.append("<li>").append(escaped(i)).append("</li>\n"));
        out.append("</ul>\n");
        return this;
    }

    /** A table with a head row; columns of numbers stand to the right, with their heads. Nothing where it has no rows. */
    Html table(Rows rows) {
        if (rows.rows().isEmpty()) {
            return this;
        }
        out.append("<table>\n<thead><tr>");
        for (int c = 0; c < rows.heads().size(); c++) {
            out.append(isNumeric(rows, c) ? "<th scope=\"col\" class=\"number\">" : "<th scope=\"col\">")
                    .append(escaped(rows.heads().get(c)))
                    .append("</th>");
        }
        out.append("</tr></thead>\n<tbody>\n");
        for (List<String> row : rows.rows()) {
            out.append("<tr>");
            for (int c = 0; c < row.size(); c++) {
                String cell = row.get(c);
                out.append(isNumeric(rows, c) ? "<td class=\"number\">" : isDate(cell) ? "<td class=\"date\">" : "<td>")
                        .append(escaped(cell))
                        .append("</td>");
            }
            out.append("</tr>\n");
        }
        out.append("</tbody>\n</table>\n");
        return this;
    }

    private static boolean isNumeric(Rows rows, int column) {
        List<String> cells = rows.rows().stream()
                .map(r -> r.get(column))
                .filter(c -> !c.isBlank())
                .toList();
        return !cells.isEmpty() && cells.stream().allMatch(Html::isNumber);
    }

    private static boolean isDate(String cell) {
        return cell.matches("\\d{4}-\\d\\d-\\d\\d( \\d\\d:\\d\\d)?");
    }

    private static boolean isNumber(String cell) {
        return cell.matches("[-+]?[0-9][0-9 .,]*( (\\+-[0-9.]+|[A-Z]{3}|mm|g|kg|mL|L|W|K|C|h|min|days?))?|-");
    }

    /** A section of an answer; rules that are judged stand in a table of their own. */
    Html passages(Passages passages) {
        Rows judged = Rows.headed("verdict", "rule");
        for (Passages.Passage one : passages.all()) {
            if (one instanceof Passages.Judged rule) {
                judged.row(rule.word(), rule.sentence());
            } else if (one instanceof Passages.Table table && !table.rows().isEmpty()) {
                Rows rows = Rows.headed(table.heads().toArray(String[]::new));
                table.rows().forEach(r -> rows.row(r.toArray(String[]::new)));
                table(rows);
            } else if (one instanceof Passages.Said said) {
                String lead =
                        said.lead().isBlank() ? "" : "<b>" + escaped(said.lead().strip()) + "</b> ";
                out.append("<p>").append(lead).append(escaped(said.text())).append("</p>\n");
            }
        }
        return judged.rows().isEmpty() ? this : table(judged);
    }

    /** A drawing with what it shows. */
    Html figure(String svg, String caption) {
        out.append("<figure>\n")
                .append(svg)
                .append("<figcaption>")
                .append(escaped(caption))
                .append("</figcaption>\n</figure>\n");
        return this;
    }

    /** What follows stands on a new sheet of paper. */
    Html newPage() {
        out.append("<div class=\"page\"></div>\n");
        return this;
    }

    /** What has been put together. */
    String body() {
        return out.toString();
    }

    /** A whole page of its own: nothing is fetched from anywhere. */
    static String page(String title, String body) {
        return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>"
                + escaped(title) + "</title>\n<style>\n" + STYLE + "</style>\n</head>\n<body>\n<main>\n" + body
                + "</main>\n</body>\n</html>\n";
    }

    private static final String STYLE = """
            @page { size: A4; margin: 16mm 14mm 16mm 20mm; @bottom-right { content: counter(page) " / " counter(pages); font: 8pt sans-serif; } }
            body { font: 10.5pt/1.4 "Liberation Sans", Arial, sans-serif; color: #1c2024; margin: 0; background: #fff; }
            main { max-width: 182mm; margin: 8mm auto; padding: 0 4mm; }
            h1 { font-size: 19pt; line-height: 1.2; margin: 0 0 3mm; }
            h2 { font-size: 14pt; margin: 9mm 0 2mm; padding-top: 2mm; border-top: 0.5mm solid #1c2024; break-after: avoid; }
            h3 { font-size: 11pt; margin: 5mm 0 1.5mm; break-after: avoid; }
            table { border-collapse: collapse; width: 100%; margin: 2mm 0 4mm; font-size: 9pt; }
            th { text-align: left; border-bottom: 0.35mm solid #1c2024; padding: 0.8mm 2mm 0.8mm 0; vertical-align: bottom; }
            td { border-bottom: 0.15mm solid #b8bec4; padding: 0.8mm 2mm 0.8mm 0; vertical-align: top; }
            td.number, th.number { text-align: right; padding-right: 4mm; }
            td.number { white-space: nowrap; }
            td.date { white-space: nowrap; }
            tr { break-inside: avoid; }
            figure { margin: 3mm 0 5mm; break-inside: avoid; }
            figure svg { max-width: 100%; height: auto; }
            figcaption { font-size: 9pt; color: #4a525a; }
            p { margin: 1.5mm 0; }
            ul { margin: 1mm 0 3mm; padding-left: 5mm; }
            ul.ticks { list-style: none; padding: 0; }
            ul.ticks li { padding: 0.6mm 0 0.6mm 7mm; position: relative; }
            ul.ticks li::before { content: ""; position: absolute; left: 0; top: 1.2mm; width: 3.4mm; height: 3.4mm;
              border: 0.3mm solid #1c2024; }
            .caution { border-left: 1.2mm solid #b3261e; padding: 0.8mm 3mm; background: #fbeeed; font-size: 9.5pt; }
            .part { break-before: page; font-size: 16pt; margin: 12mm 0 0; color: #3c6e8f; }
            .page { break-after: page; }
            nav ul { columns: 3; margin: 1mm 0; padding: 0; list-style: none; font-size: 9pt; }
            nav li { break-inside: avoid; }
            a { color: inherit; }
            """;
}
