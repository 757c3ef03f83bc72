package loopwright.loop.exchange;

/**
 * What the air side of a whole radiator conducts: overall fin efficiency × transfer coefficient × area.
 *
 * <p><b>Units.</b> SI.
 *
 * <p><b>Valid for</b> the range of {@link LouvreFin}. A fin is fed from both tubes, so its length is half its height. No resistance
 * between fin and tube.
 *
 * <p><b>Source.</b> h = j·ρ·V·cp·Pr^−⅔ with j of [ChangWang1997]; fins: {@link FinEfficiency}; overall efficiency
 * 1 − share·(1 − η), [IncroperaDeWitt2007] section 3.6.
 */
final class AirSide {

    private final CoreGeometry core;
    private final AirProperties air;
    private final double finConductivityWPerMK;
    private final double heatedWPerM3K;

    AirSide(CoreGeometry core, AirProperties air, double finConductivityWPerMK) {
        this.core = core;
        this.air = air;
        this.finConductivityWPerMK = finConductivityWPerMK;
        this.heatedWPerM3K = air.densityKgPerM3() * air.heatCapacityJPerKgK() * StrictMath.pow(air.prandtl(), -2.0 / 3);
    }

    /** W/K at a face speed, at least 0; below {@link #bendMPerS} what it is there. */
    double conductanceWPerK(double faceSpeedMPerS) {
        // j·V is constant below the bend, so the bend's speed stands for all slower ones.
        double speed = Math.max(faceSpeedMPerS, bendMPerS()) / core.freeShare();
        double reynolds = speed * core.fin().louvre().pitchM() / air.kinematicViscosityM2PerS();
        double h = core.fin().colburnJ(reynolds) * speed * heatedWPerM3K;
        LouvreFin.Fin fin = core.fin().fin();
        double perM = Math.sqrt(2 * h / (finConductivityWPerMK * fin.thicknessM()));
        double efficiency = FinEfficiency.straight(perM * fin.heightM() / 2);
        return (1 - core.finShare() * (1 - efficiency)) * h * core.airAreaM2();
    }

    /** Face speed below which the transfer coefficient is held, m/s. */
    double bendMPerS() {
        return core.faceSpeedOf(air).apply(LouvreFin.RE_HEAT_MIN);
    }
}
