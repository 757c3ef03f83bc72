package loopwright.power;

import java.math.BigDecimal;
import loopwright.catalog.part.Supply;

/**
 * What a supply has to bring: rating and plugs.
 *
 * <p>The rule is common practice, no source: rated power × 100 ≥ (100 + headroom in percent) × sum of the loads. Both sides
 * are whole numbers, so a supply exactly at the limit carries the load. It says nothing about what an electrician, the
 * supply's maker or local codes ask for besides.
 *
 * @param loadMilliwatts sum of the loads at worst
 * @param headroomPercent how much more than that the supply is rated for, 0 and up
 * @param plugs those wanted
 */
public record SupplyNeed(long loadMilliwatts, int headroomPercent, Plugs plugs) {

    /** Whole, in percent. */
    private static final int WHOLE = 100;

    /** Decimals between a milliwatt and a watt, and between a percent and a whole. */
    private static final int DECIMALS = 3 + 2;

    /** Checks the signs. */
    public SupplyNeed {
        if (loadMilliwatts < 0 || headroomPercent < 0) {
            throw new IllegalArgumentException("load and headroom must be at least 0 but were " + loadMilliwatts
                    + " mW and " + headroomPercent + " %");
        }
    }

    /** The need of a sum of loads. */
    public static SupplyNeed of(LoadSum loads, int headroomPercent, Plugs plugs) {
        return new SupplyNeed(loads.milliwatts(), headroomPercent, plugs);
    }

    /** The least rating, W, exact, without trailing zeros: {@code 737.5}. */
    public BigDecimal ratingW() {
        BigDecimal exact = BigDecimal.valueOf(scaledLoad(), DECIMALS).stripTrailingZeros();
        return exact.scale() < 0 ? exact.setScale(0) : exact;
    }

    /** Whether the rating carries the load. */
    public boolean isRatedBy(Supply.Output output) {
        return Math.multiplyExact(Load.milliwatts(output.ratedW()), WHOLE) >= scaledLoad();
    }

    /** Whether rating and plugs both do. */
    public boolean isMetBy(Supply.Output output) {
        return isRatedBy(output) && Plugs.of(output).cover(plugs);
    }

    private long scaledLoad() {
        return Math.multiplyExact(loadMilliwatts, (long) WHOLE + headroomPercent);
    }
}
