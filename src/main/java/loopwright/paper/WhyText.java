package loopwright.paper;

import java.io.PrintWriter;
import java.util.List;
import loopwright.answer.why.BuildWhy;
import loopwright.answer.why.Conflict;
import loopwright.answer.why.WayOut;
import loopwright.answer.why.WhyAnswer;
import loopwright.fit.Candidate;

/** Why wishes cannot be had, for people: the wishes, the conflicts, the ways out. */
public final class WhyText implements WhyPaper {

    private final PrintWriter out;
    private final Origin origin;
    private final Ink ink;
    private final int top;

    /**
     * Writes it.
     *
     * @param top most ways out shown
     */
    public WhyText(PrintWriter out, Origin origin, Ink ink, int top) {
        this.out = out;
        this.origin = origin;
        this.ink = ink;
        this.top = top;
    }

    @Override
    public void begin() {
        // The first chassis starts the page.
    }

    @Override
    public boolean add(WhyAnswer answer) {
        boolean fits = answer.had().isPresent();
        boolean asks = answer.asksBuilds();
        boolean built = !asks || answer.builds().had().isPresent();
        String state =
                answer.incompleteBecause().map(b -> "INCOMPLETE (" + b + ")").orElse("Complete");
        print(Lines.wrap(
                "WHY  ",
                answer.fitCase().chassis().title() + " ("
                        + answer.fitCase().chassis().id() + "). " + state + ": "
                        + verdict(answer, fits && built)));
        Columns wishes = Columns.plain();
        answer.wishes().forEach(w -> wishes.row(w.id(), w.sentence()));
        answer.buildWishes().forEach(w -> wishes.row(w.id(), w.sentence()));
        print(wishes.lines("     "));
        fit(answer);
        if (asks) {
            builds(answer, answer.builds());
        }
        print(List.of(""));
        return fits && built;
    }

    private static String verdict(WhyAnswer answer, boolean had) {
        if (had) {
            return "it can be had.";
        }
        return answer.isComplete() ? "it cannot all be had." : "whether it can all be had is not known yet.";
    }

    private void fit(WhyAnswer answer) {
        if (answer.had().isPresent()) {
            Candidate had = answer.had().get();
            print(List.of(""));
            print(Lines.wrap(
                    "fits: ", ModWords.titles(had.mods(), answer.fitCase().chassis()) + layout(answer)));
            return;
        }
        List<Conflict> conflicts = answer.conflicts();
        if (!conflicts.isEmpty()) {
            print(List.of(
                    "",
                    RankWords.count(conflicts.size(), "conflict")
                            + (answer.moreConflicts() ? "; MORE EXIST" : "")
                            + ": none can hold as a whole, each can without any one of its lines"));
            print(WhyLines.conflicts(conflicts));
        }
        List<WayOut> ways = answer.waysOut();
        List<WayOut> shown = ways.subList(0, Math.min(top, ways.size()));
        if (!shown.isEmpty()) {
            print(List.of(
                    "",
                    answer.isComplete()
                            ? "ways out, what is in your hand first, then the cheapest: with one of these the rest fits"
                            : "ways out found so far, maybe not the smallest: with one of these the rest fits"));
            print(WhyLines.waysOut(shown, answer));
        }
        if (ways.size() > shown.size()) {
            print(List.of("    " + (ways.size() - shown.size()) + " more: --top " + ways.size() + " shows all"));
        }
    }

    private static String layout(WhyAnswer answer) {
        return answer.layout().map(l -> "; layout " + l.key()).orElse("");
    }

    private void builds(WhyAnswer answer, BuildWhy builds) {
        print(List.of(""));
        if (builds.had().isPresent()) {
            print(Lines.wrap("built: ", WhyLines.build(builds.had().get(), answer)));
            return;
        }
        if (!builds.isWhole()) {
            print(List.of("INCOMPLETE: not every conflict among builds was looked for."));
        }
        List<BuildWhy.Told> conflicts = builds.conflicts();
        if (!conflicts.isEmpty()) {
            print(List.of("of builds, none keeps these together"));
            print(WhyLines.told(conflicts));
        }
        List<BuildWhy.Given> ways = builds.waysOut();
        if (!ways.isEmpty()) {
            print(List.of("", "ways out for builds: with one of these a build keeps all the rest"));
            print(WhyLines.given(ways, answer));
        }
    }

    @Override
    public void end() {
        print(List.of(
                "Facts that nobody can change (walls, rules, holes) are told too: they say how much is lacking.",
                "Nominal dimensions: measure before cutting. Cutting, spraying, mains power and coolant can hurt:",
                "local codes, the makers' sheets and licensed practice rule.",
                origin.line()));
    }

    private void print(List<String> lines) {
        lines.forEach(l -> out.println(ink.on(l)));
    }
}
