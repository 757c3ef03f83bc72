package loopwright.power;

import java.util.List;
import loopwright.catalog.part.Supply;

/**
 * Heat that a supply makes at a load: what it draws less what it delivers.
 *
 * <p><b>Units.</b> W.
 *
 * <p><b>Valid for</b> loads up to the rating; the efficiency between two points of the sheet lies on a straight line, outside
 * them it is that of the nearest.
 *
 * <p><b>Source.</b> Definition of efficiency: loss = load·(1/η − 1).
 */
public final class SupplyLoss {

    private static final double PERCENT = 100;

    private SupplyLoss() {}

    /**
     * Returns the loss, W.
     *
     * @param loadW delivered, at least 0
     * @param usualPercent efficiency of a supply that does not say
     */
    public static double lossW(Supply supply, double loadW, double usualPercent) {
        double efficiency = efficiencyPercent(supply.output(), loadW, usualPercent) / PERCENT;
        return loadW * (1 / efficiency - 1);
    }

    /** Returns what it draws from the mains, W. */
    public static double mainsW(Supply supply, double loadW, double usualPercent) {
        return loadW + lossW(supply, loadW, usualPercent);
    }

    /** Returns its efficiency at a load, percent. */
    public static double efficiencyPercent(Supply supply, double loadW, double usualPercent) {
        return efficiencyPercent(supply.output(), loadW, usualPercent);
    }

    private static double efficiencyPercent(Supply.Output output, double loadW, double usualPercent) {
        List<Supply.EfficiencyPoint> points = output.efficiency();
        if (points.isEmpty()) {
            return usualPercent;
        }
        double loadPercent = PERCENT * loadW / output.ratedW();
        Supply.EfficiencyPoint before = points.get(0);
        for (Supply.EfficiencyPoint point : points) {
            if (point.loadPercent() >= loadPercent) {
                double width = point.loadPercent() - before.loadPercent();
                double share = width > 0 ? Math.max(0, (loadPercent - before.loadPercent()) / width) : 1;
                return before.efficiencyPercent() + share * (point.efficiencyPercent() - before.efficiencyPercent());
            }
            before = point;
        }
        return before.efficiencyPercent();
    }
}
