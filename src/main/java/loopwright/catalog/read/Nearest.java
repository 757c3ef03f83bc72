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

    /** Insertions, deletions and changes of a letter that turn one word into the other. */
    static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.length()];
    }
}
