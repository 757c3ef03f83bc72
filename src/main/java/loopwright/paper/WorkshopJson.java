package loopwright.paper;

import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loopwright.workshop.money.Quote;
import loopwright.workshop.schedule.Schedule;
import loopwright.workshop.template.PanelTemplate;
import loopwright.workshop.template.Templates;

/** Which papers were written where, for programs. */
public final class WorkshopJson {

    private final Json json;
    private final JsonAnswers answers;

    /** Writes on a writer, which stays open. */
    public WorkshopJson(Writer out, Origin origin) {
        this.json = new Json(out);
        this.answers = new JsonAnswers(json, origin, "loopwright/workshop/1");
    }

    /**
     * One paper.
     *
     * @param bytes how many it has
     * @param sha256 their digest, as the manifest lists it; of the manifest itself, its own
     * @param title what it is, in words
     */
    public record Paper(String name, long bytes, String sha256, String title) {}

    /**
     * What was written.
     *
     * @param folder as the user named it
     * @param kept files of the folder that are not of this set, though they read like it
     * @param against what stands against the build
     */
    public record Written(String folder, List<Paper> papers, List<String> kept, List<String> against) {
        /** Copies. */
        public Written {
            papers = List.copyOf(papers);
            kept = List.copyOf(kept);
            against = List.copyOf(against);
        }
    }

    /** Writes the whole answer. */
    public void write(String chassis, Written written, Quote quote, Schedule schedule, Templates templates) {
        answers.begin();
        answers.open(chassis);
        json.put("complete", true);
        json.put("key", quote.key());
        json.put("out", written.folder());
        json.put("papers", papers(written.papers()));
        json.put("kept", written.kept());
        json.put("against", written.against());
        json.put("quote", quote(quote.sums()));
        json.put("schedule", schedule(schedule));
        json.put(
                "refused",
                templates.all().stream()
                        .filter(PanelTemplate::isRefused)
                        .map(PanelTemplate::id)
                        .toList());
        json.close();
        answers.end();
    }

    /** The whole answer where no build has the key. */
    public void nothing(String why) {
        answers.nothing(why);
    }

    /** The whole answer where the search was stopped before the build was found. */
    public void stopped(String why) {
        answers.stopped(why);
    }

    private static List<Map<String, Object>> papers(List<Paper> papers) {
        List<Map<String, Object>> out = new ArrayList<>();
        for (Paper paper : papers) {
            Map<String, Object> one = Json.object();
            one.put("name", paper.name());
            one.put("bytes", paper.bytes());
            one.put("sha256", paper.sha256());
            one.put("title", paper.title());
            out.add(one);
        }
        return out;
    }

    private static Map<String, Object> quote(Quote.Sums sums) {
        Map<String, Object> out = Json.object();
        out.put("currency", sums.currency());
        out.put("net_cents", sums.netCents());
        out.put("tax_percent", sums.taxPercent().<Object>map(p -> p).orElse(Json.NOTHING));
        out.put("tax_cents", sums.taxCents());
        out.put("gross_cents", sums.grossCents());
        out.put("deposit_cents", sums.depositCents());
        out.put("balance_cents", sums.balanceCents());
        out.put("valid_days", sums.validDays());
        return out;
    }

    private static Map<String, Object> schedule(Schedule schedule) {
        Map<String, Object> out = Json.object();
        out.put("start", schedule.start().toString());
        out.put("finish", schedule.finish().at().toString());
        out.put("proven", schedule.finish().proven());
        return out;
    }
}
