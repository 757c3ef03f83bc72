package loopwright.plumbing.rule;

/**
 * What a rule says of a loop.
 *
 * @param rule its id
 * @param section where it belongs on a screen
 * @param sentence with its figures
 */
public record Finding(String rule, Section section, Verdict verdict, String sentence) {

    /** What it is about. */
    public enum Section {
        /** The runs of tube. */
        RUNS,
        /** Filling. */
        FILL,
        /** Bleeding. */
        BLEED,
        /** Draining. */
        DRAIN
    }

    /** How it stands. */
    public enum Verdict {
        /** As it should be. */
        OK,
        /** Can be lived with: the sentence says how. */
        WARN,
        /** Has to be changed. */
        BROKEN,
        /** Cannot be told. */
        UNKNOWN
    }
}
