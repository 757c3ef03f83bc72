package loopwright.catalog.check;

import java.util.List;
import java.util.Locale;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.read.Problems;

/**
 * No radiator passes more heat than warming the air to the coolant's inlet would take.
 *
 * <p>Heat over the difference of the inlets has to stay below 95 % of the smaller capacity rate: with 300 transfer units a
 * crossflow exchanger of equal rates reaches 96.7 %.
 */
final class MeasuredHeatIsPossible implements Check {

    /** Share of the smaller capacity rate, dimensionless; common practice, no source. */
    private static final double SHARE_MAX = 0.95;

    /** Heat capacity of air flow, W/K for each m³/h: 1.184 kg/m³ × 1006 J/(kg·K) / 3600 s/h, air of 25 °C. */
    private static final double AIR_W_PER_K_PER_M3_PER_H = 1.184 * 1006 / 3600;

    /** Heat capacity of water flow, W/K for each L/min: 0.994 kg/L × 4179 J/(kg·K) / 60 s/min, water of 35 °C. */
    private static final double WATER_W_PER_K_PER_L_PER_MIN = 0.994 * 4179 / 60;

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Radiator> radiator : items.of(Radiator.class)) {
            List<Radiator.HeatPoint> heat = radiator.value().core().measured().heat();
            for (int i = 0; i < heat.size(); i++) {
                point(radiator, i, heat.get(i), problems);
            }
        }
    }

    private static void point(Items.Placed<Radiator> radiator, int i, Radiator.HeatPoint point, Problems problems) {
        double air = AIR_W_PER_K_PER_M3_PER_H * point.airflowM3PerH();
        double water = WATER_W_PER_K_PER_L_PER_MIN * point.flowLPerMin();
        double limit = SHARE_MAX * Math.min(air, water);
        // Of the difference of the inlets; the coolant's mean is half its own drop below its inlet.
        double perInlet = point.conductanceWPerK() / (1 + point.conductanceWPerK() / (2 * water));
        if (perInlet >= limit) {
            problems.add(radiator.item()
                    .problem(
                            "core.measured.heat[" + i + "].conductance_W_per_K",
                            Curve.plain(point.conductanceWPerK()),
                            String.format(
                                    Locale.ROOT,
                                    "what %s m3/h of air and %s L/min of water can take up, less than %.1f",
                                    Curve.plain(point.airflowM3PerH()),
                                    Curve.plain(point.flowLPerMin()),
                                    limit / (1 - limit / (2 * water))),
                            "Maybe the sheet gives W at 10 K?"));
        }
    }
}
