package loopwright.power;

import loopwright.catalog.standard.StandardElectric.Excursion;

/**
 * What a supply may carry between bursts, so that over a cycle it carries its rating.
 *
 * <p><b>Units.</b> W.
 *
 * <p><b>Valid for</b> bursts that take at most the row's share of the time.
 *
 * <p><b>Accuracy.</b> The guide's table for 1000 W comes out within 1 W (ExcursionsTest).
 *
 * <p><b>Source.</b> ATX12VO design guide, document 613768 rev 2.01, Table 3-4: the root mean square of a cycle is the rating,
 * √((1−d)·P² + d·B²) = rated, d the bursts' share of the time, B the burst.
 */
public final class Excursions {

    private static final double PERCENT = 100;

    private Excursions() {}

    /** The burst itself, W. */
    public static double burstW(double ratedW, Excursion row) {
        return ratedW * row.loadPercent() / PERCENT;
    }

    /** The most between bursts, W; 0 where bursts alone take all. */
    public static double betweenW(double ratedW, Excursion row) {
        double duty = row.dutyPercent() / PERCENT;
        double burst = burstW(ratedW, row);
        double left = ratedW * ratedW - duty * burst * burst;
        return left <= 0 ? 0 : Math.sqrt(left / (1 - duty));
    }
}
