package loopwright.fit;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import loopwright.quantity.IntervalSet;

/**
 * Disjunctions of some pairs, each with the margin that it is sure to have and the most it can have, whatever the
 * positions.
 *
 * <p>Unit: hundredths of a millimetre. Sorted by what is sure, so that those which matter come first.
 */
final class Demands {

    private final int[][] disjunctions;
    private final int[] sure;
    private final int most;

    /** One disjunction. */
    private static final class Demand {
        private final int[] disjunction;
        private final int sure;
        private final int most;

        private Demand(int[] disjunction, int sure, int most) {
            this.disjunction = disjunction;
            this.sure = sure;
            this.most = most;
        }
    }

    private Demands(List<Demand> sorted) {
        this.disjunctions = sorted.stream().map(d -> d.disjunction).toArray(int[][]::new);
        this.sure = sorted.stream().mapToInt(d -> d.sure).toArray();
        this.most = sorted.stream().mapToInt(d -> d.most).min().orElse(Integer.MAX_VALUE);
    }

    /** What disjunctions ask within these domains. */
    static Demands of(List<int[]> disjunctions, IntervalSet[] domains) {
        return new Demands(disjunctions.stream()
                .map(d -> demand(d, domains))
                .sorted(Comparator.comparingInt((Demand d) -> d.sure))
                .toList());
    }

    private static Demand demand(int[] disjunction, IntervalSet[] domains) {
        int sure = Integer.MIN_VALUE;
        int most = Integer.MIN_VALUE;
        for (int at = 0; at < disjunction.length; at += 3) {
            IntervalSet i = domains[disjunction[at]];
            IntervalSet j = domains[disjunction[at + 1]];
            sure = Math.max(sure, j.min() - i.max() - disjunction[at + 2]);
            most = Math.max(most, j.max() - i.min() - disjunction[at + 2]);
        }
        return new Demand(disjunction, sure, most);
    }

    /** No margin beyond this is possible. */
    int most() {
        return most;
    }

    /** Adds the disjunctions that are not sure to have a margin. */
    void addOpen(List<int[]> out, int marginHmm) {
        int at = Arrays.binarySearch(sure, marginHmm);
        int end = at < 0 ? -at - 1 : at;
        while (end > 0 && sure[end - 1] >= marginHmm) {
            end--;
        }
        out.addAll(Arrays.asList(disjunctions).subList(0, end));
    }
}
