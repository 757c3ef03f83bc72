package loopwright.paper;

import java.util.Map;
import loopwright.answer.InspectAnswer;

/** Sections of {@code inspect} that stand in the workshop's book too, word for word. */
public final class InspectSections {

    private InspectSections() {}

    /** Runs, filling, bleeding and draining, by title. */
    public static Map<String, Passages> plumbing(InspectAnswer answer) {
        return InspectPlumbingLines.of(answer);
    }

    /** Rails, plugs, headers. */
    public static Passages power(InspectAnswer answer) {
        return InspectPowerLines.of(answer.inspection().powering());
    }

    /** Which cable feeds what, and whether it reaches. */
    public static Passages cables(InspectAnswer answer) {
        return InspectCableLines.of(answer);
    }

    /** Drives and their screws. */
    public static Passages drives(InspectAnswer answer) {
        return InspectDriveLines.of(answer);
    }
}
