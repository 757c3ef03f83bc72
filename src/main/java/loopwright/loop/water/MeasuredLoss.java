package loopwright.loop.water;

import java.util.List;
import loopwright.loop.FallingCurve;
import loopwright.loop.RisingCurve;

/**
 * Loss of a part measured with water at 20 °C: a block, a radiator, a filter, a coupling.
 *
 * <p><b>Valid for</b> flows among the points, and outside them by a power law k·Q^n that joins the nearest point: n is fitted
 * to all points by least squares of the logarithms and kept within 1 (laminar) and 2 (fully turbulent).
 *
 * <p><b>Another liquid.</b> A loss that goes with Q^n in a given part can depend on density and viscosity only as
 * ρ^(n−1)·μ^(2−n)·Q^n: nothing else has the dimension of a pressure. So the loss is multiplied by
 * (ρ/ρ0)^(n−1)·(μ/μ0)^(2−n), with the one n of all points.
 *
 * <p><b>Accuracy.</b> Exact at the points with water at 20 °C; the power law is as good as it fits. One measured point says
 * nothing of n: 1.8 is taken.
 *
 * <p><b>Source.</b> Dimensional analysis ([White2016] ch. 5); curve as {@link RisingCurve}.
 */
public final class MeasuredLoss implements Passage {

    // ASSUMED: common practice, no source, see src/site/markdown/physics/assumptions.md.
    /** Exponent of a part that was measured at one flow only, dimensionless. */
    private static final double EXPONENT_OF_ONE_POINT = 1.8;

    /** Exponent of laminar flow, dimensionless: the least there is. */
    private static final double EXPONENT_MIN = 1;

    /** Exponent of fully turbulent flow, dimensionless: the most there is. */
    private static final double EXPONENT_MAX = 2;

    /** One measured point: flow at least 0 m³/s, loss at least 0 Pa. */
    public record Point(double flowM3PerS, double lossPa) {}

    private final List<Point> points;
    private final RisingCurve between;
    private final double exponent;

    /**
     * A part with these points.
     *
     * @param points at least two, flow and loss rising strictly; the first may be no loss at no flow
     * @throws IllegalArgumentException if they are not
     */
    public MeasuredLoss(List<Point> points) {
        if (points.size() < 2) {
            throw new IllegalArgumentException("a measured loss needs two points but has " + points.size());
        }
        boolean fromZero = points.get(0).flowM3PerS() == 0 && points.get(0).lossPa() == 0;
        RisingCurve whole = curve(points);
        this.points = List.copyOf(points.subList(fromZero ? 1 : 0, points.size()));
        Point first = this.points.get(0);
        if (!(first.flowM3PerS() > 0 && first.lossPa() > 0)) {
            throw new IllegalArgumentException("loss is above 0 Pa where flow is above 0 m³/s, but one is " + first);
        }
        // A single point has no other to be joined to: the curve is never asked.
        between = this.points.size() < 2 ? whole : curve(this.points);
        exponent = this.points.size() < 2 ? EXPONENT_OF_ONE_POINT : fittedExponent(this.points);
    }

    /** Exponent n of the power law outside the points, 1 to 2, dimensionless. */
    public double exponent() {
        return exponent;
    }

    @Override
    public double lossPa(double flowM3PerS, LiquidState liquid) {
        return liquidFactor(liquid) * waterLossPa(flowM3PerS);
    }

    @Override
    public LossCurve in(LiquidState liquid) {
        double factor = liquidFactor(liquid);
        return flowM3PerS -> factor * waterLossPa(flowM3PerS);
    }

    private double waterLossPa(double flowM3PerS) {
        double flow = FlowRange.checked(flowM3PerS);
        Point first = points.get(0);
        if (flow <= first.flowM3PerS()) {
            return power(first, flow);
        }
        Point last = points.get(points.size() - 1);
        return flow >= last.flowM3PerS() ? power(last, flow) : between.at(flow);
    }

    private double power(Point from, double flowM3PerS) {
        return from.lossPa() * StrictMath.pow(flowM3PerS / from.flowM3PerS(), exponent);
    }

    private double liquidFactor(LiquidState liquid) {
        LiquidState water = LiquidState.WATER_20_C;
        double lnDensity = StrictMath.log(liquid.densityKgPerM3() / water.densityKgPerM3());
        double lnViscosity = StrictMath.log(liquid.viscosityPaS() / water.viscosityPaS());
        return StrictMath.exp((exponent - 1) * lnDensity + (2 - exponent) * lnViscosity);
    }

    private static RisingCurve curve(List<Point> points) {
        return new RisingCurve(points.stream()
                .map(p -> new FallingCurve.Point(p.flowM3PerS(), p.lossPa()))
                .toList());
    }

    /** Slope of the straight line through the logarithms, by least squares. */
    private static double fittedExponent(List<Point> points) {
        double meanX = 0;
        double meanY = 0;
        for (Point p : points) {
            meanX += StrictMath.log(p.flowM3PerS()) / points.size();
            meanY += StrictMath.log(p.lossPa()) / points.size();
        }
        double xx = 0;
        double xy = 0;
        for (Point p : points) {
            double dx = StrictMath.log(p.flowM3PerS()) - meanX;
            xx += dx * dx;
            xy += dx * (StrictMath.log(p.lossPa()) - meanY);
        }
        return Math.max(EXPONENT_MIN, Math.min(EXPONENT_MAX, xy / xx));
    }

    @Override
    public String toString() {
        return "MeasuredLoss" + points;
    }
}
