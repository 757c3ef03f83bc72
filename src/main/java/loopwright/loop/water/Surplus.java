package loopwright.loop.water;

import org.hipparchus.analysis.UnivariateFunction;

/** What is left of the head at a flow once the passage has taken its part, Pa: it falls strictly, and is 0 at one flow. */
final class Surplus implements UnivariateFunction {

    /** Share of the free flow that is none, dimensionless: less than a drop in a thousand years. */
    static final double NOTHING = 1e-18;

    private final HeadCurve pumps;
    private final LossCurve loss;
    private final double shutOffPa;
    private final double freeM3PerS;
    private final double atFreePa;

    Surplus(HeadCurve pumps, LossCurve loss) {
        this.pumps = pumps;
        this.loss = loss;
        shutOffPa = pumps.shutOffPa();
        freeM3PerS = pumps.freeFlowM3PerS();
        atFreePa = finite(-loss.lossPa(freeM3PerS));
    }

    double shutOffPa() {
        return shutOffPa;
    }

    double freeM3PerS() {
        return freeM3PerS;
    }

    /** About where it is 0: a head that falls, and a loss that rises, with the square of the flow meet there. */
    double likelyM3PerS() {
        return freeM3PerS * Math.sqrt(shutOffPa / (shutOffPa + Math.max(0, -atFreePa)));
    }

    @Override
    public double value(double flowM3PerS) {
        if (flowM3PerS <= 0) {
            return shutOffPa;
        }
        return flowM3PerS >= freeM3PerS ? atFreePa : finite(pumps.headPa(flowM3PerS) - loss.lossPa(flowM3PerS));
    }

    /** An infinite loss is one that is more than the pumps have: as much again as their head at rest. */
    private double finite(double surplusPa) {
        if (Double.isNaN(surplusPa)) {
            throw new IllegalStateException("head or loss is not a number: " + pumps);
        }
        return surplusPa == Double.NEGATIVE_INFINITY ? -shutOffPa : surplusPa;
    }
}
