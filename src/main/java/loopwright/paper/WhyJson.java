package loopwright.paper;

import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import loopwright.answer.why.Stated;
import loopwright.answer.why.WhyAnswer;

/** Why wishes cannot be had, for programs: one document with an answer a chassis. */
public final class WhyJson implements WhyPaper {

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
        json.put("wishes", WhyRows.stated(wishes));
        boolean known = answer.isComplete();
        json.put("can_be_had", fits && built ? true : known ? (Object) false : Json.NOTHING);
        json.put("fits", fits ? true : known ? (Object) false : Json.NOTHING);
        answer.had()
                .ifPresent(h -> json.put("mods", h.mods().ids(answer.fitCase().chassis())));
        answer.layout().ifPresent(l -> json.put("layout", l.key()));
        WhyRows.fit(answer).forEach(json::put);
        if (answer.asksBuilds()) {
            WhyRows.builds(answer).forEach(json::put);
        }
        json.put("complete", answer.isComplete());
        answer.incompleteBecause().ifPresent(b -> json.put("incomplete_because", b));
        json.close();
        return fits && built;
    }

    @Override
    public void end() {
        answers.end();
    }
}
