package loopwright.catalog.measure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What-ifs of a command line, each {@code WHAT.FIELD=VALUE}. */
public final class Assumptions {

    private Assumptions() {}

    /**
     * What they replace.
     *
     * @param lengths as they are without them
     * @throws NotUnderstood if one means nothing or too much, or two are about one length
     */
    public static List<Replacement> replacements(List<String> texts, Lengths lengths) {
        List<Replacement> out = new ArrayList<>();
        Map<String, String> by = new HashMap<>();
        for (String text : texts) {
            for (Replacement one : Assumption.of(text).replacements(lengths)) {
                String before = by.putIfAbsent(one.address(), one.by());
                if (before != null) {
                    throw new NotUnderstood(one.by() + ": " + one.address() + " is assumed already by " + before);
                }
                out.add(one);
            }
        }
        return List.copyOf(out);
    }
}
