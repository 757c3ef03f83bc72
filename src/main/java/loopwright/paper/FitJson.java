package loopwright.paper;

import java.io.Writer;
import java.util.List;
import java.util.Map;
import loopwright.answer.FitAnswer;
import loopwright.answer.FitList;
import loopwright.fit.FoundLayout;
import loopwright.fit.UnknownLayout;

/**
 * What fits, for programs: one document with an answer a chassis, each with every layout.
 *
 * <p>Whether an answer is complete stands after its lists, because writing them can be interrupted too.
 */
public final class FitJson implements FitPaper {

    private final Json json;
    private final JsonAnswers answers;

    /** Writes on a writer, which stays open. */
    public FitJson(Writer out, Origin origin) {
        this.json = new Json(out);
        this.answers = new JsonAnswers(json, origin, "loopwright/fit/1");
    }

    @Override
    public void begin() {
        answers.begin();
    }

    @Override
    public boolean add(FitAnswer answer) {
        List<FoundLayout> fits = answer.fits();
        FitRows rows = new FitRows(answer);
        answers.open(answer.fitCase().chassis().id());
        json.openList("layouts");
        int told = 0;
        while (told < fits.size() && !answer.stopsHere()) {
            json.item(rows.layout(fits.get(told)));
            told++;
        }
        json.closeList().openList("unknown");
        for (UnknownLayout unknown : answer.unknown()) {
            json.item(rows.unknown(unknown));
        }
        json.closeList();
        json.put(
                "groups",
                FitList.groups(fits.subList(0, told)).stream()
                        .map(FitJson::group)
                        .toList());
        json.put("found", fits.size());
        json.put("complete", answer.incompleteBecause().isEmpty());
        answer.incompleteBecause().ifPresent(b -> json.put("incomplete_because", b));
        boolean nothing = answer.fitsInAll() == 0 && answer.unknown().isEmpty();
        if (nothing && answer.incompleteBecause().isEmpty()) {
            json.put("why", WhyRows.fit(answer.why()));
        }
        json.close();
        return !fits.isEmpty();
    }

    private static Map<String, Object> group(FitList.Group group) {
        Map<String, Object> out = Json.object();
        out.put("what", group.what());
        out.put("counted", group.counted());
        out.put(
                "entries",
                group.entries().stream().map(e -> e.found().layout().key()).toList());
        return out;
    }

    @Override
    public void end() {
        answers.end();
    }
}
