package loopwright.paper.book;

import java.util.ArrayList;
import java.util.List;
import loopwright.workshop.assembly.Assembly;
import loopwright.workshop.assembly.Assembly.Service;
import loopwright.workshop.assembly.Assembly.Step;

/** The order in which a build goes together, and what comes out first to service a part. */
final class AssemblyChapter {

    /** Said beside every order. */
    private static final String CARE =
            "Heavy or glass-sided machines are lifted by two. Mains unplugged before any hand goes in;"
                    + " loop drained and dry before electronics are powered. No powered driver into a radiator. Local codes and the"
                    + " makers' sheets rule.";

    private final Assembly assembly;

    AssemblyChapter(Assembly assembly) {
        this.assembly = assembly;
    }

    Html html() {
        Html html = new Html();
        html.text(
                "Everything that comes off the case is off. Each step is possible when its turn comes: a way in, a hand at each"
                        + " plug and fitting, a straight driver at each screw whose place is known.");
        html.table(steps());
        if (!assembly.deadlock().isEmpty()) {
            html.caution("These block each other, whichever goes first: " + String.join(", ", assembly.deadlock())
                    + ". Try it with the parts themselves or card dummies before anything is cut.");
        }
        html.heading("To service a part");
        html.table(services());
        if (!assembly.notes().isEmpty()) {
            html.heading("To look at by hand").list(assembly.notes());
        }
        return html.caution(CARE);
    }

    private Rows steps() {
        Rows rows = Rows.headed("step", "what", "screws", "at the dry fits", "after paint", "must be in before");
        List<Step> all = assembly.steps();
        for (int i = 0; i < all.size(); i++) {
            int from = i;
            while (i + 1 < all.size() && isLike(all.get(i), all.get(i + 1))) {
                i++;
            }
            Step step = all.get(i);
            rows.row(
                    from == i ? String.valueOf(i + 1) : (from + 1) + " to " + (i + 1),
                    String.join(
                            ", ",
                            all.subList(from, i + 1).stream().map(Step::title).toList()),
                    String.join("; ", step.screws()),
                    step.dry(),
                    step.paintedAndWet(),
                    String.join(", ", step.before()));
        }
        return rows;
    }

    /** Whether two steps take the same words: plugs, and runs. */
    private static boolean isLike(Step one, Step next) {
        return one.screws().isEmpty()
                && next.screws().isEmpty()
                && one.before().equals(next.before())
                && one.dry().equals(next.dry())
                && one.paintedAndWet().equals(next.paintedAndWet());
    }

    private Rows services() {
        Rows rows = Rows.headed("part", "comes out first", "unplug", "the same screws free", "tubes", "loop");
        for (Service one : assembly.services()) {
            rows.row(
                    one.title(),
                    first(one),
                    String.join(", ", one.plugs()),
                    String.join(", ", one.together()),
                    tubes(one),
                    loop(one));
        }
        return rows;
    }

    private static String first(Service one) {
        if (!one.possible()) {
            return "no way out along the axes: try it by hand";
        }
        return one.first().isEmpty() ? "nothing" : String.join(", ", one.first());
    }

    private static String tubes(Service one) {
        List<String> said = new ArrayList<>();
        if (!one.tubes().undone().isEmpty()) {
            said.add("undo: " + String.join(", ", runs(one.tubes().undone())));
        }
        if (!one.tubes().aside().isEmpty()) {
            said.add("swing aside, or undo and drain: "
                    + String.join(", ", runs(one.tubes().aside())));
        }
        return String.join("; ", said);
    }

    private static List<String> runs(List<String> titles) {
        return titles.stream().map(t -> t.replaceFirst("^tube ", "")).toList();
    }

    private static String loop(Service one) {
        if (one.drain()) {
            return "drain";
        }
        return one.tubes().aside().isEmpty() ? "stays full" : "stays full if they swing";
    }
}
