package loopwright.loop.exchange;

import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.part.Radiator;

/**
 * Pressure loss of air in a core, from points on a bench.
 *
 * <p><b>Units.</b> SI.
 *
 * <p><b>Valid for</b> any speed: between two points a power of the speed; below the first in proportion to it; past the last
 * the power of the last two points, at least 1 and at most 2. Other air than the bench's: the same drag coefficient at the
 * same Reynolds number, which is exact for like flow.
 *
 * <p><b>Accuracy.</b> That of the points.
 */
final class MeasuredLoss implements AirLoss {

    private static final double SECONDS_PER_H = 3600;

    private record Point(double speedMPerS, double lossPa) {}

    private final List<Point> points;

    /**
     * A loss through points.
     *
     * @param measured at the bench's air, through the whole radiator; at least two, both figures above 0 and rising
     */
    MeasuredLoss(List<Radiator.AirLossPoint> measured, double faceAreaM2, AirProperties air) {
        if (measured.size() < 2) {
            throw new IllegalArgumentException("an air loss needs two points but has " + measured.size());
        }
        double speeds = air.kinematicViscosityM2PerS() / Bench.AIR.kinematicViscosityM2PerS();
        double pressures = air.densityKgPerM3() / Bench.AIR.densityKgPerM3() * speeds * speeds;
        List<Point> scaled = new ArrayList<>();
        for (Radiator.AirLossPoint p : measured) {
            double speed = p.airflowM3PerH() / (SECONDS_PER_H * faceAreaM2);
            scaled.add(new Point(speed * speeds, p.lossPa() * pressures));
        }
        points = List.copyOf(scaled);
    }

    @Override
    public double lossPa(double faceSpeedMPerS) {
        Point first = points.get(0);
        if (faceSpeedMPerS <= first.speedMPerS) {
            return first.lossPa * faceSpeedMPerS / first.speedMPerS;
        }
        int last = points.size() - 1;
        int i = 1;
        while (i < last && faceSpeedMPerS > points.get(i).speedMPerS) {
            i++;
        }
        Point a = points.get(i - 1);
        Point b = points.get(i);
        double power = StrictMath.log(b.lossPa / a.lossPa) / StrictMath.log(b.speedMPerS / a.speedMPerS);
        if (faceSpeedMPerS > b.speedMPerS) {
            return b.lossPa * StrictMath.pow(faceSpeedMPerS / b.speedMPerS, Math.max(1, Math.min(2, power)));
        }
        return a.lossPa * StrictMath.pow(faceSpeedMPerS / a.speedMPerS, power);
    }

    @Override
    public List<Double> bendsMPerS() {
        return points.stream().map(Point::speedMPerS).toList();
    }
}
