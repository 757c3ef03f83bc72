package loopwright.oracle.rank;

import java.util.Comparator;

/** What one build comes to: cents, hundredths of a kelvin over the room, millionths of sound power, minutes, days. */
record BruteFigures(long priceCents, long coolantCentiK, long soundMillionths, long labourMin, long daysD) {

    /** The same with warmer coolant. */
    BruteFigures at(long overRoomCentiK) {
        return new BruteFigures(priceCents, overRoomCentiK, soundMillionths, labourMin, daysD);
    }

    long by(By by) {
        return switch (by) {
            case COST -> priceCents;
            case TEMPERATURE -> coolantCentiK;
            case NOISE -> soundMillionths;
            case LABOUR -> labourMin;
            case DAYS -> daysD;
        };
    }

    /** By one figure, then price, then temperature. */
    static Comparator<BruteFigures> order(By by) {
        return Comparator.comparingLong((BruteFigures f) -> f.by(by))
                .thenComparingLong(BruteFigures::priceCents)
                .thenComparingLong(BruteFigures::coolantCentiK);
    }

    /** What a list shows of it: the figure it is ordered by, price, temperature. */
    ListFigures listed(By by) {
        return new ListFigures(by(by), priceCents, coolantCentiK);
    }

    /** The figures that decide a place in a list. */
    record ListFigures(long figure, long priceCents, long coolantCentiK) implements Comparable<ListFigures> {
        @Override
        public int compareTo(ListFigures other) {
            return Comparator.comparingLong(ListFigures::figure)
                    .thenComparingLong(ListFigures::priceCents)
                    .thenComparingLong(ListFigures::coolantCentiK)
                    .compare(this, other);
        }
    }
}
