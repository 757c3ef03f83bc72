package loopwright.oracle.rank;

import java.util.Map;
import java.util.SortedMap;

/**
 * What builds are worth offering.
 *
 * @param unbeaten price and temperature of each unbeaten build, and how many tie there
 * @param best the best figures of each layout by each order
 * @param builds how many builds there are
 * @param feasible how many of them keep every limit
 */
record RankAnswer(
        SortedMap<Point, Integer> unbeaten,
        Map<By, SortedMap<String, BruteFigures.ListFigures>> best,
        long builds,
        long feasible) {

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
