package loopwright.power;

import java.util.List;
import loopwright.catalog.part.Supply;

/**
 * How loud a supply's own fan is at a load.
 *
 * <p><b>Units.</b> dB(A) at 1 m.
 *
 * <p><b>Valid for</b> any load; between two points of the sheet the level lies on a straight line, outside them it is that of the
 * nearest; a supply without points is as loud as its sheet says at most, at any load.
 *
 * <p><b>Accuracy.</b> That of the sheet; in warm air its fan turns faster.
 */
public final class SupplyNoise {

    private static final double PERCENT = 100;

    private SupplyNoise() {}

    /**
     * Returns the level, dB(A).
     *
     * @param loadW delivered, at least 0
     */
    public static double levelDBA(Supply supply, double loadW) {
        List<Supply.NoisePoint> points = supply.noise();
        if (points.isEmpty()) {
            return supply.output().noiseMaxDBA();
        }
        double loadPercent = PERCENT * loadW / supply.output().ratedW();
        Supply.NoisePoint before = points.get(0);
        for (Supply.NoisePoint point : points) {
            if (point.loadPercent() >= loadPercent) {
                double width = point.loadPercent() - before.loadPercent();
                double share = width > 0 ? Math.max(0, (loadPercent - before.loadPercent()) / width) : 1;
                return before.noiseDBA() + share * (point.noiseDBA() - before.noiseDBA());
            }
            before = point;
        }
        return before.noiseDBA();
    }
}
