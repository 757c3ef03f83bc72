package loopwright.loop.exchange;

import java.util.List;

/**
 * Pressure loss of air in a finned core: entrance, friction, exit.
 *
 * <p><b>Units.</b> SI.
 *
 * <p><b>Valid for</b> the range of {@link LouvreFin}; linear in speed for small flows. Air of one density: the loss that
 * warming adds (some 1 % at 10 K) is left out.
 *
 * <p><b>Accuracy.</b> ±15 % at best, that of the friction.
 *
 * <p><b>Source.</b> [KaysLondon1984] eq. 2-26 without change of density: ΔP = ½ρV²·(Kc + Ke + f·A/Ac). Coefficients:
 * entrance 0.5·(1 − σ)^¾ and exit (1 − σ)², [Idelchik1994] diagrams 4-9 and 4-1.
 */
final class FinLoss implements AirLoss {

    /** Coefficient of a sharp entrance from a wide space, dimensionless, [Idelchik1994] diagram 4-9. */
    private static final double ENTRANCE = 0.5;

    /** Exponent of the closed share at an entrance, dimensionless, [Idelchik1994] diagram 4-9. */
    private static final double ENTRANCE_EXPONENT = 0.75;

    private final AirProperties air;
    private final CoreGeometry core;
    private final CoreFriction friction;
    private final double ends;

    FinLoss(CoreGeometry core, AirProperties air) {
        this.air = air;
        this.core = core;
        this.friction = new CoreFriction(core.fin());
        double closed = 1 - core.freeShare();
        this.ends = ENTRANCE * StrictMath.pow(closed, ENTRANCE_EXPONENT) + closed * closed;
    }

    @Override
    public double lossPa(double faceSpeedMPerS) {
        double speed = faceSpeedMPerS / core.freeShare();
        double pitchM = core.fin().louvre().pitchM();
        double reynolds = speed * pitchM / air.kinematicViscosityM2PerS();
        double walls = core.airAreaM2() / (core.faceAreaM2() * core.freeShare());
        // ½ρV²·f·A/Ac with f = (f·Re)·ν/(V·Lp), so that nothing is divided by a speed of 0.
        double frictionPa = air.viscosityPaS() * speed * friction.frictionReynolds(reynolds) * walls / (2 * pitchM);
        return air.densityKgPerM3() * speed * speed * ends / 2 + frictionPa;
    }

    @Override
    public List<Double> bendsMPerS() {
        return friction.kinks().stream().map(core.faceSpeedOf(air)).toList();
    }
}
