package loopwright.paper;

import java.io.Writer;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import loopwright.answer.RankAnswer;
import loopwright.loop.Band;
import loopwright.loop.air.AirDirection;
import loopwright.rank.Build;
import loopwright.rank.RankResult.Ranked;

/** Ranked builds, for programs. */
public final class RankJson implements RankPaper {

    private final Json json;
    private final JsonAnswers answers;

    /** Writes on a writer, which stays open. */
    public RankJson(Writer out, Origin origin) {
        this.json = new Json(out);
        this.answers = new JsonAnswers(json, origin, "loopwright/rank/1");
    }

    @Override
    public void begin() {
        answers.begin();
    }

    @Override
    public boolean add(RankAnswer answer) {
        answers.open(answer.fitCase().chassis().id());
        json.put("complete", answer.incompleteBecause().isEmpty());
        answer.incompleteBecause().ifPresent(b -> json.put("incomplete_because", b));
        answer.why().ifPresent(w -> json.put("why", w.had().isPresent() ? WhyRows.builds(w) : WhyRows.fit(w)));
        json.put("layouts_in_all", answer.result().fits().fits().size());
        json.put("temperature_model", "steady state: air, coolant and heat balanced together");
        json.openList("unbeaten");
        answer.result().unbeaten().forEach(b -> json.item(build(answer, b)));
        json.closeList().put("ordered_by", JsonWords.of(answer.order())).openList("builds");
        answer.result().listed().forEach(b -> json.item(build(answer, b)));
        json.closeList().put("cheaper_fail_by", answer.result().cheaper());
        json.close();
        return !answer.result().unbeaten().isEmpty();
    }

    private static Map<String, Object> build(RankAnswer answer, Ranked ranked) {
        Build build = ranked.build();
        Band band = answer.band(build);
        Map<String, Object> out = Json.object();
        out.put("key", build.key());
        out.put("layout", build.layout().key());
        out.put("parts", build.parts());
        out.put("mods", build.modIds());
        out.put("intake", build.mountsThatBlow(AirDirection.IN));
        out.put("exhaust", build.mountsThatBlow(AirDirection.OUT));
        out.put("fan_duty_percent", build.dutyPercent());
        out.put("cost_cents", build.outcome().priceCents());
        out.put("currency", answer.fitCase().brief().terms().currency());
        out.put("coolant_over_room_K", BigDecimal.valueOf(build.outcome().coolantOverRoomCentiK(), 2));
        out.put("coolant_over_room_band_K", List.of(Mm.rounded(band.lowK(), 2), Mm.rounded(band.highK(), 2)));
        out.put("noise_dBA", Mm.rounded(RankWords.levelDBA(build), 1));
        out.put("labour_min", build.outcome().labourMin());
        out.put("days", build.outcome().days());
        out.put("visible_cuts", build.bill().visibleCuts());
        out.put("hidden_cuts", build.bill().hiddenCuts());
        out.put("tightest", ChanceWords.gap(ranked.witness().tightest()));
        ChanceWords.put(out, ranked.witness(), answer.fitCase().brief());
        out.put("equal_builds", ranked.equal());
        return out;
    }

    @Override
    public void end() {
        answers.end();
    }
}
