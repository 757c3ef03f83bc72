package loopwright.oracle.brute;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Pattern;

/** One wish about what fits, as why.md has it. */
public sealed interface WhyWish {

    /** As written. */
    String text();

    /** Its fact. */
    default String fact() {
        return "wish:" + text();
    }

    /**
     * A radiator on one of some mounts: of a pattern, of a pattern and thickness, of an id, or any of the brief.
     *
     * @param thicknessHmm hundredths of a millimetre
     */
    record RadiatorOn(
            String text,
            List<String> mounts,
            Optional<Pattern> pattern,
            Optional<Integer> thicknessHmm,
            Optional<String> id)
            implements WhyWish {}

    /** No radiator there. */
    record NothingOn(String text, String mount) implements WhyWish {}

    /** That part. */
    record PartFor(String text, String role, String id) implements WhyWish {}

    /** The mod is done. */
    record With(String text, String mod) implements WhyWish {}

    /** The mod is kept out. */
    record Without(String text, String mod) implements WhyWish {}
}
