package loopwright.paper;

/** Whether a terminal shows colours. They only repeat what the words say. */
public enum Ink {
    /** Plain text. */
    PLAIN,
    /** Colours of a terminal. */
    COLOURED;

    private static final String BOLD = "\u001b[1m";
    private static final String YELLOW = "\u001b[33m";
    private static final String RED = "\u001b[31m";
    private static final String OFF = "\u001b[0m";

    /** A finished line with its colours. */
    public String on(String line) {
        if (this == PLAIN) {
            return line;
        }
        String out = line.replaceFirst("\\bTIGHT\\b", YELLOW + "TIGHT" + OFF)
                .replaceFirst("\\bBELOW\\b", YELLOW + "BELOW" + OFF)
                .replaceFirst("\\bINCOMPLETE\\b", RED + "INCOMPLETE" + OFF);
        return out.matches("(?s)(FIT|UNLOCK|[A-Z]{1,3}) .*") ? out.replaceFirst("^[A-Z]+", BOLD + "$0" + OFF) : out;
    }
}
