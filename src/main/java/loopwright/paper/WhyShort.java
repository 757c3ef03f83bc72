package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import loopwright.answer.why.BuildWhy;
import loopwright.answer.why.Conflict;
import loopwright.answer.why.WayOut;
import loopwright.answer.why.WhyAnswer;

/** The first conflicts and ways out, under an answer that found nothing. */
final class WhyShort {

    /** Conflicts and ways out that are told; the rest is for the command that asks just this. */
    private static final int TOLD_MAX = 3;

    private WhyShort() {}

    /** Why nothing fits. */
    static List<String> fit(WhyAnswer answer) {
        List<Conflict> conflicts = answer.conflicts();
        List<WayOut> ways = answer.waysOut();
        List<String> out = new ArrayList<>();
        out.add("none of these can hold as a whole, each can without any one of its lines");
        out.addAll(WhyLines.conflicts(first(conflicts)));
        out.add("ways out");
        out.addAll(WhyLines.waysOut(first(ways), answer));
        boolean more = conflicts.size() > TOLD_MAX || ways.size() > TOLD_MAX || answer.moreConflicts();
        out.add(more ? "more: why BRIEF tells all" : "why BRIEF tells the same for single wishes");
        return out;
    }

    /** Why no build keeps the limits. */
    static List<String> builds(WhyAnswer answer) {
        BuildWhy builds = answer.builds();
        List<String> out = new ArrayList<>();
        if (!builds.isWhole()) {
            out.add("INCOMPLETE: not every conflict was looked for.");
        }
        out.add("none of these can be kept together by a build");
        out.addAll(WhyLines.told(first(builds.conflicts())));
        out.add("ways out: with one of these a build keeps all the rest");
        out.addAll(WhyLines.given(first(builds.waysOut()), answer));
        return out;
    }

    private static <T> List<T> first(List<T> all) {
        return all.subList(0, Math.min(TOLD_MAX, all.size()));
    }
}
