package loopwright.workshop.template;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import loopwright.catalog.chassis.Panel;
import loopwright.quantity.Hundredths;
import loopwright.workshop.drawing.Row;

/** The sheet of words that goes with a drawing: what the edges are, the table of holes, findings, how to go about it. */
final class TemplateWords {

    /** Where the columns of the table start, mm. */
    private static final List<Integer> COLUMNS_MM = List.of(0, 12, 66, 104, 122, 140);

    /** Letters that surely go into the second column. */
    private static final int FOR_LETTERS = 28;

    private TemplateWords() {}

    /** All of it. */
    static List<Row> of(
            List<String> head,
            Plan plan,
            Function<Hole, String> sight,
            List<Finding> findings,
            Panel.Material material) {
        List<Row> out = new ArrayList<>();
        head.forEach(line -> out.addAll(Row.wrapped(line)));
        out.add(Row.blank());
        out.add(Row.heading("Holes and cuts"));
        out.add(Row.of(COLUMNS_MM, List.of("no.", "for", "size, mm", "from A", "from B", "edge")));
        for (Hole hole : plan.holes()) {
            List<String> what = Row.lines(hole.tag().what(), FOR_LETTERS);
            out.add(Row.of(
                    COLUMNS_MM,
                    List.of(
                            hole.tag().id(),
                            what.get(0),
                            hole.size(),
                            Hundredths.text(plan.edge().acrossHmm(hole.centre().xHmm())),
                            Hundredths.text(plan.edge().upHmm(hole.centre().yHmm())),
                            sight.apply(hole))));
            what.stream().skip(1).forEach(line -> out.add(Row.of(COLUMNS_MM, List.of("", line))));
        }
        if (!plan.existing().isEmpty()) {
            out.addAll(Row.wrapped(plan.existing().size()
                    + " screws go into holes or slots that are there: drawn dashed, nothing to drill."));
        }
        out.addAll(Row.wrapped("Size and place of the middle. Holes for screws: ISO 273, class medium."));
        out.add(Row.blank());
        out.add(Row.heading("Look at these first"));
        if (findings.isEmpty()) {
            out.addAll(Row.wrapped("Nothing: every web and edge distance is kept."));
        }
        findings.stream().sorted().forEach(f -> out.addAll(Row.wrapped(f.toString())));
        out.add(Row.blank());
        out.addAll(Cautions.order(material));
        return out;
    }
}
