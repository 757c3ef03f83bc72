package loopwright.paper;

import java.util.Map;
import loopwright.answer.WhatIfAnswer;

/** What every JSON answer has round it: where it came from, and a list with an answer a chassis. */
final class JsonAnswers {

    private final Json json;
    private final Origin origin;
    private final String schema;

    /**
     * An envelope.
     *
     * @param schema name and version of the answer's form, like {@code loopwright/fit/1}
     */
    JsonAnswers(Json json, Origin origin, String schema) {
        this.json = json;
        this.origin = origin;
        this.schema = schema;
    }

    void begin() {
        json.open();
        putOrigin();
        json.openList("answers");
    }

    /** Starts the answer for a chassis; whoever fills it closes it. */
    void open(String chassis) {
        json.open();
        putOrigin();
        json.put("chassis", chassis);
        origin.findWhatIf(chassis).ifPresent(w -> json.put("overrides", WhatIfJson.object(w)));
    }

    private void putOrigin() {
        json.put("schema", schema)
                .put("program", origin.program())
                .put("catalog", origin.catalog())
                .put("brief", origin.brief());
    }

    /** The whole answer where there is nothing to show. */
    void nothing(String why) {
        none(true, why);
    }

    /** The whole answer where the search was stopped before there was anything to show. */
    void stopped(String why) {
        none(false, why);
    }

    private void none(Object complete, String why) {
        begin();
        Map<String, Object> one = Json.object();
        one.put("complete", complete);
        one.put("found", false);
        one.put("why", why);
        if (!origin.whatIfs().isEmpty()) {
            one.put(
                    "overrides",
                    origin.whatIfs().stream().map(JsonAnswers::ofChassis).toList());
        }
        json.item(one);
        end();
    }

    private static Map<String, Object> ofChassis(WhatIfAnswer answer) {
        Map<String, Object> out = Json.object();
        out.put("chassis", answer.fitCase().chassis().id());
        out.putAll(WhatIfJson.object(answer));
        return out;
    }

    void end() {
        json.closeList().close().end();
    }
}
