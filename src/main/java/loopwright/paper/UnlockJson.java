package loopwright.paper;

import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import loopwright.answer.CutTable;
import loopwright.answer.UnlockAnswer;
import loopwright.answer.Unlocks.AtMount;
import loopwright.answer.Unlocks.Combination;
import loopwright.answer.Unlocks.RadiatorClass;
import loopwright.fit.MountFrame;

/** What mods unlock, for programs: one document with an answer a chassis. */
public final class UnlockJson implements UnlockPaper {

    private final Json json;
    private final JsonAnswers answers;
    private final UnlockView view;

    /**
     * Writes on a writer, which stays open.
     *
     * @param view what is told besides
     */
    public UnlockJson(Writer out, Origin origin, UnlockView view) {
        this.json = new Json(out);
        this.answers = new JsonAnswers(json, origin, "loopwright/unlock/1");
        this.view = view;
    }

    @Override
    public void begin() {
        answers.begin();
    }

    @Override
    public boolean add(UnlockAnswer answer) {
        UnlockRows rows = new UnlockRows(answer);
        answers.open(answer.fitCase().chassis().id());
        json.put("currency", answer.fitCase().brief().terms().currency());
        json.put("heat_W", UnlockRows.orNull(answer.heatW(), 0));
        json.put("as_delivered_coolant_over_room_K", UnlockRows.orNull(answer.asDeliveredOverRoomK(), 2));
        json.put("as_delivered_coolant_over_room_band_K", UnlockRows.bandOrNull(answer.asDeliveredBand()));
        json.openList("mounts");
        for (AtMount at : answer.mounts()) {
            json.item(rows.mount(at));
        }
        json.closeList().openList("combinations");
        for (Combination each : answer.combinations()) {
            json.item(rows.combination(each));
        }
        json.closeList();
        view.cuts().ifPresent(n -> json.put("cuts", cuts(answer, n)));
        view.layout().ifPresent(key -> json.put("layout", rows.layout(key, answer.waysTo(key))));
        json.put("complete", answer.incompleteBecause().isEmpty());
        answer.incompleteBecause().ifPresent(b -> json.put("incomplete_because", b));
        json.close();
        return view.layout()
                .map(key -> !answer.waysTo(key).isEmpty())
                .orElse(!answer.fits().fits().isEmpty());
    }

    private static Map<String, Object> cuts(UnlockAnswer answer, int cuts) {
        List<CutTable.Row> rows = answer.cutRows(cuts);
        Map<String, Object> out = Json.object();
        out.put("any", block(answer, rows, CutTable.Row::all));
        out.put("hidden_only", block(answer, rows, CutTable.Row::hiddenOnly));
        return out;
    }

    private static List<Object> block(
            UnlockAnswer answer, List<CutTable.Row> rows, Function<CutTable.Row, List<List<RadiatorClass>>> classes) {
        List<Object> out = new ArrayList<>();
        for (CutTable.Row row : rows) {
            List<Object> mounts = new ArrayList<>();
            for (MountFrame frame : answer.frames()) {
                Map<String, Object> mount = Json.object();
                mount.put("mount", frame.mount().id());
                mount.put(
                        "largest",
                        classes.apply(row).get(frame.index()).stream()
                                .map(UnlockRows::stack)
                                .toList());
                mounts.add(mount);
            }
            Map<String, Object> one = Json.object();
            one.put("cuts_at_most", row.cutsAtMost());
            one.put("mounts", mounts);
            out.add(one);
        }
        return out;
    }

    @Override
    public void end() {
        answers.end();
    }
}
