package loopwright.loop.exchange;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import loopwright.catalog.part.Radiator;

/**
 * One factor that brings a core's predicted conductance to what a bench measured.
 *
 * <p><b>Units.</b> SI; the factor is dimensionless.
 *
 * <p><b>How.</b> A bench tells heat over the difference between the coolant's mean and the incoming air. With it and both
 * capacity rates the effectiveness is known, from it the transfer units ({@link Crossflow}), from them the UA it took. The factor
 * is the geometric mean over the points of that over the predicted one.
 */
final class Calibration {

    private static final double SECONDS_PER_H = 3600;

    private static final double M3_PER_S_OF_L_PER_MIN = 1e-3 / 60;

    private Calibration() {}

    /**
     * Returns the factor; 1 without points.
     *
     * @param predicted UA in W/K, of face speed in m/s and coolant flow in m³/s
     * @throws IllegalArgumentException if a point is beyond any exchanger
     */
    static double factor(List<Radiator.HeatPoint> points, double faceAreaM2, DoubleBinaryOperator predicted) {
        if (points.isEmpty()) {
            return 1;
        }
        double logs = 0;
        for (Radiator.HeatPoint point : points) {
            double faceSpeed = point.airflowM3PerH() / (SECONDS_PER_H * faceAreaM2);
            double flow = point.flowLPerMin() * M3_PER_S_OF_L_PER_MIN;
            logs += StrictMath.log(neededWPerK(point) / predicted.applyAsDouble(faceSpeed, flow));
        }
        return StrictMath.exp(logs / points.size());
    }

    private static double neededWPerK(Radiator.HeatPoint point) {
        double air =
                point.airflowM3PerH() / SECONDS_PER_H * Bench.AIR.densityKgPerM3() * Bench.AIR.heatCapacityJPerKgK();
        double water = point.flowLPerMin() * M3_PER_S_OF_L_PER_MIN * Bench.WATER_KG_PER_M3 * Bench.WATER_J_PER_KG_K;
        double smaller = Math.min(air, water);
        // Heat = ε·smaller·(hottest coolant − air), and the coolant's mean is half its own drop below the hottest.
        double perInlet = point.conductanceWPerK() / (1 + point.conductanceWPerK() / (2 * water));
        double ntu = Crossflow.transferUnits(perInlet / smaller, smaller / Math.max(air, water));
        return ntu * smaller;
    }
}
