package loopwright.workshop.template;

/** Something to know before cutting, in words with numbers. */
public record Finding(Severity severity, String text) implements Comparable<Finding> {

    /** How grave it is. */
    public enum Severity {
        /** It must not be cut like this. */
        REFUSED("REFUSED"),
        /** It may be cut, but look first. */
        WARNING("WARNING"),
        /** Good to know. */
        NOTE("note");

        private final String word;

        Severity(String word) {
            this.word = word;
        }

        /** How it is printed. */
        public String word() {
            return word;
        }
    }

    /** A refusal. */
    public static Finding refused(String text) {
        return new Finding(Severity.REFUSED, text);
    }

    /** A warning. */
    public static Finding warning(String text) {
        return new Finding(Severity.WARNING, text);
    }

    /** A note. */
    public static Finding note(String text) {
        return new Finding(Severity.NOTE, text);
    }

    /** The gravest first. */
    @Override
    public int compareTo(Finding other) {
        return severity.compareTo(other.severity);
    }

    @Override
    public String toString() {
        return severity.word() + ": " + text;
    }
}
