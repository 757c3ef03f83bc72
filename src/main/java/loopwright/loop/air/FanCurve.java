package loopwright.loop.air;

import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.part.Fan;
import loopwright.loop.FallingCurve;
import loopwright.quantity.Units;

/**
 * A fan's pressure against flow at full speed: the points of its sheet, joined without overshoot.
 *
 * <p><b>Units.</b> Pa against m³/s, air of 1.2 kg/m³.
 *
 * <p><b>Valid for</b> any flow from 0: beyond the free flow, where another fan drives air through it, it resists with the
 * square of the flow, setting out with its last slope, so that by the fan laws a slower fan never resists less.
 *
 * <p><b>Source.</b> The part's sheet; joined as in {@link FallingCurve}.
 */
final class FanCurve {

    private final FallingCurve curve;
    private final double freeFlowM3PerS;
    private final double slopeAtFreePaSPerM3;

    /**
     * The curve of a fan.
     *
     * @throws IllegalArgumentException if it does not fall from no flow to no pressure
     */
    FanCurve(Fan fan) {
        List<FallingCurve.Point> points = new ArrayList<>();
        fan.air()
                .curve()
                .forEach(p ->
                        points.add(new FallingCurve.Point(p.flowM3PerH() / Units.SECONDS_PER_HOUR, p.pressurePa())));
        curve = new FallingCurve(points);
        if (curve.first().x() != 0 || curve.first().y() <= 0 || curve.last().y() != 0) {
            throw new IllegalArgumentException("fan " + fan.id()
                    + ": the curve must run from 0 m³/h, with a pressure above 0, to 0 Pa but is "
                    + fan.air().curve());
        }
        freeFlowM3PerS = curve.last().x();
        slopeAtFreePaSPerM3 =
                Math.min(curve.slopeAt(freeFlowM3PerS), -curve.first().y() / freeFlowM3PerS);
    }

    /** Pressure, Pa; below 0 beyond the free flow. */
    double pressurePa(double flowM3PerS) {
        return flowM3PerS <= freeFlowM3PerS
                ? curve.at(flowM3PerS)
                : slopeAtFreePaSPerM3
                        / (2 * freeFlowM3PerS)
                        * (flowM3PerS * flowM3PerS - freeFlowM3PerS * freeFlowM3PerS);
    }

    /** How fast the pressure falls with flow, Pa·s/m³, at most 0. */
    double slopePaSPerM3(double flowM3PerS) {
        return flowM3PerS < freeFlowM3PerS
                ? curve.slopeAt(flowM3PerS)
                : slopeAtFreePaSPerM3 * flowM3PerS / freeFlowM3PerS;
    }

    /** Pressure without flow, Pa. */
    double shutOffPa() {
        return curve.first().y();
    }

    /** Flow without pressure, m³/s. */
    double freeFlowM3PerS() {
        return freeFlowM3PerS;
    }
}
