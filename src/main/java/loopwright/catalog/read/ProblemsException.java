package loopwright.catalog.read;

import java.util.ArrayList;
import java.util.List;

/** Files are wrong: carries every problem, up to {@value #SHOWN_MAX} of them, and says how many more there are. */
public final class ProblemsException extends RuntimeException {

    /** Most problems carried. */
    public static final int SHOWN_MAX = 500;

    private static final long serialVersionUID = 1;

    private final ArrayList<Problem> problems;
    private final int more;

    /** Keeps the first {@value #SHOWN_MAX} and counts the rest. */
    public ProblemsException(List<Problem> all) {
        super(String.join("\n", linesOf(all)));
        problems = new ArrayList<>(all.subList(0, Math.min(all.size(), SHOWN_MAX)));
        more = all.size() - problems.size();
    }

    /** The problems by file, line and column; at most {@value #SHOWN_MAX}. */
    public List<Problem> problems() {
        return List.copyOf(problems);
    }

    /** How many there are beyond those carried. */
    public int more() {
        return more;
    }

    /** One line a problem, and a last line that counts those left out. */
    public List<String> lines() {
        return List.of(getMessage().split("\n"));
    }

    /** One line a problem for at most {@value #SHOWN_MAX}, then "and N more". */
    public static List<String> linesOf(List<Problem> all) {
        List<String> lines =
                new ArrayList<>(all.stream().limit(SHOWN_MAX).map(Problem::text).toList());
        if (all.size() > SHOWN_MAX) {
            lines.add("and " + (all.size() - SHOWN_MAX) + " more");
        }
        return List.copyOf(lines);
    }

    @Override
    public String getMessage() {
        String message = super.getMessage();
        return message == null ? "" : message;
    }
}
