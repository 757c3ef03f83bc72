package loopwright.paper;

import java.io.Writer;
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

/** Why wishes cannot be had, for programs: one document with an answer a chassis. */
public final class WhyJson implements WhyPaper {

    private static final int DECIMALS = 2;
    private static final double CENTI = 100;

    private final Json json;
    private final JsonAnswers answers;

    /** Writes on a writer, which stays open. */
    public WhyJson(Writer out, Origin origin) {
        this.json = new Json(out);
        this.answers = new JsonAnswers(json, origin, "loopwright/why/1");
    }

    @Override
    public void begin() {
        answers.begin();
    }

    @Override
    public boolean add(WhyAnswer answer) {
        boolean fits = answer.had().isPresent();
        boolean built = !answer.asksBuilds() || answer.builds().had().isPresent();
        answers.open(answer.fitCase().chassis().id());
        List<Stated> wishes = new ArrayList<>(answer.wishes());
        wishes.addAll(answer.buildWishes());
        json.put("wishes", stated(wishes));
        json.put("can_be_had", fits && built);
        json.put("fits", fits);
        answer.had()
                .ifPresent(h -> json.put("mods", h.mods().ids(answer.fitCase().chassis())));
        answer.layout().ifPresent(l -> json.put("layout", l.key()));
        json.put("conflicts", answer.conflicts().stream().map(WhyJson::conflict).toList());
        json.put("more_conflicts", answer.moreConflicts());
        json.put("ways_out", answer.waysOut().stream().map(w -> way(w, answer)).toList());
        if (answer.asksBuilds()) {
            builds(answer.builds(), answer);
        }
        json.put("complete", answer.isComplete());
        answer.incompleteBecause().ifPresent(b -> json.put("incomplete_because", b));
        json.close();
        return fits && built;
    }

    private void builds(BuildWhy builds, WhyAnswer answer) {
        builds.had().ifPresent(b -> json.put("build", build(b, answer)));
        json.put(
                "build_conflicts",
                builds.conflicts().stream().map(WhyJson::told).toList());
        json.put(
                "build_ways_out",
                builds.waysOut().stream()
                        .map(g -> {
                            Map<String, Object> out = Json.object();
                            out.put("changes", stated(g.changes()));
                            out.put("build", build(g.build(), answer));
                            return out;
                        })
                        .toList());
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

    private static List<Map<String, Object>> stated(List<Stated> all) {
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

    @Override
    public void end() {
        answers.end();
    }
}
