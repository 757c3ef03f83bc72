package loopwright.paper;

import java.util.Map;
import java.util.stream.Collectors;
import loopwright.answer.InspectAnswer;
import loopwright.rank.Build;

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

    /** What it weighs, how it stands, how it is lifted. */
    public static Passages mass(InspectAnswer answer) {
        return InspectMassLines.of(answer.inspection());
    }

    /** Whether all of it fits, in words and percent, and what is likeliest to clash. */
    public static String chance(InspectAnswer answer) {
        return ChanceWords.fits(
                answer.inspection().witness(), answer.inspection().fitCase().brief());
    }

    /** Radiators and fans of a build: {@code roof 2x120x30, fans 25 above}. */
    public static String stacks(Build build) {
        return build.stacks().stream().map(StackWords::full).collect(Collectors.joining(" | "));
    }

    /** Drives and their screws. */
    public static Passages drives(InspectAnswer answer) {
        return InspectDriveLines.of(answer);
    }
}
