package loopwright.loop.air;

import loopwright.catalog.part.Fan;
import loopwright.loop.Duty;

/**
 * Equal fans on one mount: side by side in a row, in one layer (push or pull) or two, one behind the other (push-pull).
 *
 * <p><b>Units.</b> m³/s for the whole row, Pa.
 *
 * <p><b>Valid for</b> air of any density: pressure goes with it.
 *
 * <p><b>Accuracy.</b> That of the fan's sheet; two close layers do not quite add, so push-pull reads high.
 *
 * <p><b>Source.</b> Fan laws, AMCA 201: flow ∝ n, pressure ∝ n²ρ. Side by side flows add, in series pressures do.
 */
public final class FanBank {

    /** Density the curves of sheets are given for, kg/m³; AMCA 201's standard air. */
    private static final double CURVE_DENSITY_KG_PER_M3 = 1.2;

    private final FanCurve curve;
    private final double flowScale;
    private final double pressureScale;

    /**
     * A bank of fans.
     *
     * @param row how many stand side by side, at least 1
     * @param layers 1 or 2
     * @param densityKgPerM3 of the air
     */
    public FanBank(Fan fan, int row, int layers, Duty duty, double densityKgPerM3) {
        if (!(row >= 1 && (layers == 1 || layers == 2))) {
            throw new IllegalArgumentException(
                    "a bank has fans in 1 or 2 layers but was " + row + " in " + layers + " of " + fan.id());
        }
        if (!(densityKgPerM3 > 0)) {
            throw new IllegalArgumentException("density must be above 0 kg/m³ but was " + densityKgPerM3);
        }
        double speed = duty.speedShare(fan.air().dutyMinPercent());
        curve = new FanCurve(fan);
        flowScale = row * speed;
        pressureScale = layers * speed * speed * densityKgPerM3 / CURVE_DENSITY_KG_PER_M3;
    }

    private FanBank(FanCurve curve, double flowScale, double pressureScale) {
        this.curve = curve;
        this.flowScale = flowScale;
        this.pressureScale = pressureScale;
    }

    /** The same bank with pressures so many times as high: for what its curve may be off by. */
    public FanBank scaled(double pressureFactor) {
        return new FanBank(curve, flowScale, pressureScale * pressureFactor);
    }

    /** Pressure at a flow through the whole row, Pa. */
    public double pressurePa(double flowM3PerS) {
        return pressureScale * curve.pressurePa(flowM3PerS / flowScale);
    }

    double slopePaSPerM3(double flowM3PerS) {
        return pressureScale * curve.slopePaSPerM3(flowM3PerS / flowScale) / flowScale;
    }

    /** Pressure without flow, Pa. */
    public double shutOffPa() {
        return pressureScale * curve.shutOffPa();
    }

    /** Flow without pressure, m³/s. */
    public double freeFlowM3PerS() {
        return flowScale * curve.freeFlowM3PerS();
    }

    /** A flow that no pressure that helps it so much can exceed, m³/s: where the drawn-out curve falls to minus that. */
    double reachM3PerS(double helpPa) {
        double free = freeFlowM3PerS();
        double slopeAtFree = slopePaSPerM3(2 * free) / 2; // beyond the free flow the slope goes with the flow
        return free * Math.sqrt(1 - 2 * Math.max(0, helpPa) / (slopeAtFree * free));
    }
}
