package loopwright.loop.water;

import java.util.ArrayList;
import java.util.List;
import loopwright.loop.FallingCurve;

/**
 * One pump at one speed: head against flow from its data sheet, at less than full speed by the affinity laws.
 *
 * <p><b>Valid for</b> speeds that the motor can hold. Below the first point its head holds; a sheet that ends above no head
 * is carried on in a straight line through its last two points. The sheet's head, in Pa, is taken for any liquid: heads
 * in metres were turned into pressure for water, and glycol is at most 5 % denser.
 *
 * <p><b>Accuracy.</b> Exact at the points at full speed; small pumps lose more at low speed than the laws say.
 *
 * <p><b>Source.</b> Affinity laws, AMCA 201 for fans and the same for pumps: flow goes with speed, head with its square.
 * Curve: {@link FallingCurve}.
 */
public final class PumpCurve implements HeadCurve {

    /** One point of the data sheet: flow at least 0 m³/s, head at least 0 Pa. */
    public record Point(double flowM3PerS, double headPa) {}

    private final FallingCurve atFullSpeed;
    private final double freeFlowAtFullSpeedM3PerS;
    private final double speedShare;

    /**
     * A pump at full speed.
     *
     * @param points at least two, flow rising strictly from 0 or more, head never rising and not below 0
     * @throws IllegalArgumentException if they are not, or never come down to no head
     */
    public PumpCurve(List<Point> points) {
        List<FallingCurve.Point> curve = new ArrayList<>();
        for (Point p : points) {
            if (!(p.flowM3PerS() >= 0 && p.headPa() >= 0)) {
                throw new IllegalArgumentException("flow and head of a pump must be at least 0 but one point is " + p);
            }
            curve.add(new FallingCurve.Point(p.flowM3PerS(), p.headPa()));
        }
        FallingCurve given = new FallingCurve(curve);
        atFullSpeed = given.last().y() == 0 ? given : carriedOn(curve);
        freeFlowAtFullSpeedM3PerS = curve.stream()
                .filter(p -> p.y() == 0)
                .findFirst()
                .orElse(atFullSpeed.last())
                .x();
        speedShare = 1;
    }

    private PumpCurve(PumpCurve pump, double speedShare) {
        atFullSpeed = pump.atFullSpeed;
        freeFlowAtFullSpeedM3PerS = pump.freeFlowAtFullSpeedM3PerS;
        this.speedShare = speedShare;
    }

    /**
     * The same pump at another speed.
     *
     * @param share of full speed, 0 (it stands) to 1
     * @throws IllegalArgumentException if it is outside its range, or NaN
     */
    public PumpCurve atSpeed(double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("speed share of a pump must be in [0, 1] but was " + share);
        }
        return new PumpCurve(this, share);
    }

    @Override
    public double headPa(double flowM3PerS) {
        if (FlowRange.checked(flowM3PerS) >= freeFlowM3PerS()) {
            return 0;
        }
        return speedShare * speedShare * atFullSpeed.at(flowM3PerS / speedShare);
    }

    @Override
    public double shutOffPa() {
        return speedShare * speedShare * atFullSpeed.first().y();
    }

    @Override
    public double freeFlowM3PerS() {
        return speedShare * freeFlowAtFullSpeedM3PerS;
    }

    private static FallingCurve carriedOn(List<FallingCurve.Point> curve) {
        FallingCurve.Point last = curve.get(curve.size() - 1);
        FallingCurve.Point before = curve.get(curve.size() - 2);
        double fallPa = before.y() - last.y();
        double endM3PerS = last.x() + last.y() * (last.x() - before.x()) / fallPa;
        if (!(fallPa > 0 && endM3PerS <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("a pump's head must come down to 0 Pa but ends level at " + last);
        }
        curve.add(new FallingCurve.Point(endM3PerS, 0));
        return new FallingCurve(curve);
    }

    @Override
    public String toString() {
        return "PumpCurve[" + shutOffPa() + " Pa at rest, " + freeFlowM3PerS() + " m³/s free]";
    }
}
