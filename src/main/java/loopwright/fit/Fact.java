package loopwright.fit;

/**
 * Something that a candidate for a wish can break: a wish, a limit of the brief, a rule, or two bodies that keep clear.
 *
 * @param number its number in sets of facts
 * @param kind what it is about
 * @param about the rest of its id, like {@code front} of {@code seat:front}
 */
public record Fact(int number, Kind kind, String about) {

    /** What facts are about; the order in which they are told. */
    public enum Kind {
        /** What is wished. */
        WISH("wish"),
        /** A mod the brief forbids. */
        FORBIDDEN("forbidden"),
        /** Cuts that show. */
        VISIBLE_CUTS("visible-cuts"),
        /** Cuts in all. */
        CUTS("cuts"),
        /** The brief's choice of parts. */
        CHOICE("choice"),
        /** A mod that needs another. */
        NEEDS("needs"),
        /** Two mods that exclude each other. */
        EXCLUDES("excludes"),
        /** Parts that go together. */
        PARTS("parts"),
        /** A place for a part. */
        PLACE("place"),
        /** A hole pattern. */
        SEAT("seat"),
        /** Openness of a panel. */
        OPEN("open"),
        /** Air outside a panel. */
        OUTSIDE("outside"),
        /** A body that is measured. */
        KNOWN("known"),
        /** Two bodies, or a body and a wall, that keep clear. */
        CLEAR("clear");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The first word of an id. */
        public String word() {
            return word;
        }
    }

    /** Its id, stable and printed. */
    public String id() {
        return about.isEmpty() ? kind.word() : kind.word() + ":" + about;
    }
}
