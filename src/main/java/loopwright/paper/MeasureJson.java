package loopwright.paper;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loopwright.answer.measure.MeasureAnswer;
import loopwright.answer.measure.Stakes;
import loopwright.answer.measure.Waiting;
import loopwright.answer.measure.Worth;
import loopwright.catalog.standard.Practice.Instrument;
import loopwright.fit.Witness;

/** What to measure first, for programs. */
public final class MeasureJson implements MeasurePaper {

    private final Json json;
    private final JsonAnswers answers;

    /** Writes on a writer, which stays open. */
    public MeasureJson(PrintWriter out, Origin origin) {
        this.json = new Json(out);
        this.answers = new JsonAnswers(json, origin, "loopwright/measure/1");
    }

    @Override
    public void begin() {
        answers.begin();
    }

    @Override
    public boolean add(MeasureAnswer answer) {
        answers.open(answer.fitCase().chassis().id());
        json.put("currency", answer.fitCase().brief().terms().currency());
        json.put("layouts_fit", answer.fitsInAll());
        json.put("layouts_looked_at", answer.looked().size());
        json.openList("unknown");
        answer.waiting().forEach(w -> json.item(waiting(w)));
        json.closeList().openList("dimensions");
        answer.worths().forEach(w -> json.item(worth(w)));
        json.closeList().put("dimensions_in_all", answer.dimensions());
        json.openList("stages");
        answer.stakes().stages().forEach(s -> json.item(stage(s)));
        json.closeList();
        answer.witness().ifPresent(w -> json.put("layout", layout(w, answer)));
        json.put("complete", answer.incompleteBecause().isEmpty());
        answer.incompleteBecause().ifPresent(b -> json.put("incomplete_because", b));
        json.close();
        return answer.isAbout();
    }

    private static Map<String, Object> waiting(Waiting w) {
        Map<String, Object> out = Json.object();
        out.put("of", w.measurable().ids());
        out.put("dimension", w.measurable().path());
        out.put("layouts_wait", w.layouts());
        out.put("only_one_for", w.only());
        out.put("where", w.where());
        return out;
    }

    private static Map<String, Object> worth(Worth w) {
        Map<String, Object> out = Json.object();
        out.put("of", w.measurable().ids());
        out.put("dimension", w.measurable().path());
        out.put("value_mm", Mm.number(w.measurable().now().valueHmm()));
        out.put("plus_minus_mm", Mm.number(w.measurable().now().plusMinusHmm()));
        out.put("known", JsonWords.of(w.measurable().now().known()));
        out.put("layouts_hang", w.hang().layouts());
        out.put("die", w.hang().die());
        out.put("come_alive", w.hang().exact() ? w.hang().comeAlive() : Json.NOTHING);
        out.put("exact", w.hang().exact());
        out.put("regret_avoided_cents", Math.round(w.regretCents()));
        out.put(
                "instrument",
                w.choice().instrument().<Object>map(Instrument::id).orElse(Json.NOTHING));
        out.put(
                "instrument_plus_minus_mm",
                w.choice()
                        .instrument()
                        .<Object>map(i -> Mm.number(i.plusMinusHmm()))
                        .orElse(Json.NOTHING));
        out.put(
                "not_good_enough",
                w.choice().notGoodEnough().stream().map(Instrument::id).toList());
        out.put("where", w.spot());
        return out;
    }

    private static Map<String, Object> stage(Stakes.At at) {
        Map<String, Object> out = Json.object();
        out.put("stage", JsonWords.of(at.stage()));
        out.put("low_cents", at.lowCents());
        out.put("high_cents", at.highCents());
        return out;
    }

    private static Map<String, Object> layout(Witness witness, MeasureAnswer answer) {
        Map<String, Object> out = Json.object();
        out.put("key", answer.looked().get(0).layout().key());
        out.put("mods", witness.mods().ids(answer.fitCase().chassis()));
        ChanceWords.put(out, witness, answer.fitCase().brief());
        List<Object> gaps = new ArrayList<>();
        witness.gaps().forEach(g -> gaps.add(ChanceWords.gap(g)));
        out.put("gaps", gaps);
        return out;
    }

    @Override
    public void end() {
        answers.end();
    }
}
