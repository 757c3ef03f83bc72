package loopwright.oracle.rank;

import java.util.Map;
import java.util.SortedMap;

/**
 * What builds are worth offering.
 *
 * @param unbeaten price and temperature of each unbeaten build, and how many tie there
 * @param best the best figures of each layout by each order
 * @param counts what it took
 */
record RankAnswer(
        SortedMap<Point, Integer> unbeaten, Map<By, SortedMap<String, BruteFigures.ListFigures>> best, Counts counts) {

    /**
     * What it took.
     *
     * @param builds how many builds there are, duties apart
     * @param feasible how many there are that keep every limit, duties together
     * @param solved how many machines were solved
     */
    record Counts(long builds, long feasible, long solved) {}

    /** Price in cents and coolant over the room in hundredths of a kelvin. */
    record Point(long priceCents, long coolantCentiK) implements Comparable<Point> {
        @Override
        public int compareTo(Point other) {
            return priceCents != other.priceCents
                    ? Long.compare(priceCents, other.priceCents)
                    : Long.compare(coolantCentiK, other.coolantCentiK);
        }

        boolean beats(Point other) {
            return priceCents <= other.priceCents && coolantCentiK <= other.coolantCentiK && !equals(other);
        }
    }
}
