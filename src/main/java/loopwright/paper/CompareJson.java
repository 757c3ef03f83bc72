package loopwright.paper;

import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loopwright.answer.Comparison;
import loopwright.answer.Comparison.Row;

/** Two builds side by side, for programs. */
public final class CompareJson implements ComparePaper {

    private final Json json;
    private final JsonAnswers answers;

    /** Writes to a writer. */
    public CompareJson(Writer out, Origin origin) {
        this.json = new Json(out);
        this.answers = new JsonAnswers(json, origin, "loopwright/compare/1");
    }

    @Override
    public void write(Comparison comparison) {
        answers.begin();
        answers.open(comparison.first().fitCase().chassis().id());
        json.put("complete", true);
        json.put("first", comparison.first().build().key());
        json.put("second", comparison.second().build().key());
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Row row : comparison.rows()) {
            Map<String, Object> one = Json.object();
            one.put("figure", row.figure());
            one.put("first", Mm.rounded(row.first(), 3));
            one.put("second", Mm.rounded(row.second(), 3));
            one.put("difference", Mm.rounded(row.difference(), 3));
            one.put(
                    "plus_minus",
                    row.plusMinus().isPresent() ? Mm.rounded(row.plusMinus().getAsDouble(), 3) : Json.NOTHING);
            rows.add(one);
        }
        json.put("figures", rows);
        json.put("only_first", comparison.onlyOne().get(0));
        json.put("only_second", comparison.onlyOne().get(1));
        json.close();
        answers.end();
    }

    @Override
    public void nothing(String why) {
        answers.nothing(why);
    }

    @Override
    public void stopped(String why) {
        answers.stopped(why);
    }
}
