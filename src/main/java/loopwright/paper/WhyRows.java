package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loopwright.answer.why.BuildWhy;
import loopwright.answer.why.Cause;
import loopwright.answer.why.Conflict;
import loopwright.answer.why.Stated;
import loopwright.answer.why.WayOut;
import loopwright.answer.why.WhyAnswer;
import loopwright.rank.Build;

/** Conflicts and ways out as objects for programs. */
final class WhyRows {

    private static final int DECIMALS = 2;
    private static final double CENTI = 100;

    private WhyRows() {}

    /** What is said of what fits. */
    static Map<String, Object> fit(WhyAnswer answer) {
        Map<String, Object> out = Json.object();
        out.put("conflicts", answer.conflicts().stream().map(WhyRows::conflict).toList());
        out.put("more_conflicts", answer.moreConflicts());
        out.put("ways_out", answer.waysOut().stream().map(w -> way(w, answer)).toList());
        return out;
    }

    /** What is said of builds. */
    static Map<String, Object> builds(WhyAnswer answer) {
        BuildWhy builds = answer.builds();
        Map<String, Object> out = Json.object();
        builds.had().ifPresent(b -> out.put("build", build(b, answer)));
        out.put(
                "build_conflicts",
                builds.conflicts().stream().map(WhyRows::told).toList());
        List<Map<String, Object>> ways = new ArrayList<>();
        for (BuildWhy.Given given : builds.waysOut()) {
            Map<String, Object> way = Json.object();
            way.put("changes", stated(given.changes()));
            way.put("build", build(given.build(), answer));
            ways.add(way);
        }
        out.put("build_ways_out", ways);
        return out;
    }

    private static Map<String, Object> told(BuildWhy.Told told) {
        Map<String, Object> out = conflict(told.conflict());
        List<Map<String, Object>> causes = new ArrayList<>();
        for (Cause cause : told.causes()) {
            Map<String, Object> one = Json.object();
            one.put("cause", cause.name());
            one.put("step", cause.step());
            one.put("gain_K", Mm.rounded(cause.gainK(), DECIMALS));
            causes.add(one);
        }
        out.put("causes", causes);
        return out;
    }

    private static Map<String, Object> build(Build build, WhyAnswer answer) {
        Map<String, Object> out = Json.object();
        out.put("layout", build.layout().key());
        out.put("mods", build.modIds());
        out.put("parts", build.parts());
        out.put("cost_cents", build.outcome().priceCents());
        out.put("currency", answer.fitCase().brief().terms().currency());
        out.put("coolant_over_room_K", Mm.rounded(build.outcome().coolantOverRoomCentiK() / CENTI, DECIMALS));
        out.put("noise_dBA", Mm.rounded(RankWords.levelDBA(build), 1));
        out.put("labour_min", build.outcome().labourMin());
        out.put("days", build.outcome().days());
        return out;
    }

    private static Map<String, Object> conflict(Conflict conflict) {
        Map<String, Object> out = Json.object();
        out.put("facts", stated(conflict.facts()));
        return out;
    }

    static List<Map<String, Object>> stated(List<Stated> all) {
        List<Map<String, Object>> out = new ArrayList<>();
        for (Stated one : all) {
            Map<String, Object> map = Json.object();
            map.put("id", one.id());
            map.put("sentence", one.sentence());
            one.lack().ifPresent(l -> {
                map.put("lack", Mm.rounded(l.amount(), DECIMALS));
                map.put("unit", l.unit());
            });
            out.add(map);
        }
        return out;
    }

    private static Map<String, Object> way(WayOut way, WhyAnswer answer) {
        Map<String, Object> out = Json.object();
        out.put("changes", stated(way.changes()));
        out.put("kind", way.kind().name().toLowerCase(java.util.Locale.ROOT));
        out.put("mods", way.mods().ids(answer.fitCase().chassis()));
        out.put("cost_cents", way.effort().costCents());
        out.put("labour_min", way.effort().handsOnMin());
        out.put("days", way.effort().days());
        out.put("instead", stated(way.instead()));
        return out;
    }
}
