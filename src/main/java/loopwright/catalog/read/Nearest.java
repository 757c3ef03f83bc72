package loopwright.catalog.read;

import java.util.Collection;
import java.util.Optional;

/** The known word that a mistyped one comes nearest to. */
public final class Nearest {

    private Nearest() {}

    /** The nearest by edit distance, if it is near enough to be meant; ties go to the first. */
    public static Optional<String> to(String typed, Collection<String> known) {
        String best = "";
        int least = Math.min(Math.max(2, typed.length() / 3), typed.length() - 1) + 1;
        for (String word : known) {
            if (typed.length() > 80 || Math.abs(word.length() - typed.length()) >= least) {
                continue;
            }
            int distance = distance(typed, word);
            if (distance < least) {
                least = distance;
                best = word;
            }
        }
        return best.isEmpty() ? Optional.empty() : Optional.of(best);
    }

    /** A hint "Maybe X?", or nothing. */
    public static String hint(String typed, Collection<String> known) {
        return to(typed, known).map(word -> "Maybe " + word + "?").orElse("");
    }

    /** Insertions, deletions, changes and swaps of neighbouring letters that turn one word into the other. */
    static int distance(String a, String b) {
        int[][] steps = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                steps[i][j] = i == 0 ? j : j == 0 ? i : least(steps, a, b, i, j);
            }
        }
        return steps[a.length()][b.length()];
    }

    private static int least(int[][] steps, String a, String b, int i, int j) {
        boolean same = a.charAt(i - 1) == b.charAt(j - 1);
        int best = Math.min(steps[i - 1][j], steps[i][j - 1]) + 1;
        best = Math.min(best, steps[i - 1][j - 1] + (same ? 0 : 1));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, steps[i - 2][j - 2] + 1) : best;
    }
}
