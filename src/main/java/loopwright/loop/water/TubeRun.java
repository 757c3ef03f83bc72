package loopwright.loop.water;

/**
 * A straight round tube, or a bent one read as straight: loss by Darcy and Weisbach.
 *
 * <p><b>Valid for</b> flow developed over the whole length; Reynolds numbers to 1e8, see {@link TubeFriction}.
 *
 * <p><b>Accuracy.</b> That of the friction factor. Bends are {@link FittingLoss}es of their own.
 *
 * <p><b>Source.</b> [White2016] ch. 6: Δp = f·L/D·ρV²/2; laminar 32·μ·L·V/D².
 *
 * @param boreM inner diameter, above 0 to 1 m
 * @param lengthM above 0, m
 * @param roughnessM height of the wall's roughness, 0 to a twentieth of the bore, m
 */
public record TubeRun(double boreM, double lengthM, double roughnessM) implements Passage {

    /** Checks the ranges. */
    public TubeRun {
        Bore.checked("boreM", boreM);
        if (!(lengthM > 0 && lengthM <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("lengthM must be above 0 m and finite but was " + lengthM);
        }
        if (!(roughnessM >= 0 && roughnessM / boreM <= TubeFriction.ROUGHNESS_MAX)) {
            throw new IllegalArgumentException(
                    "roughnessM must be in [0, 0.05] of the bore " + boreM + " m but was " + roughnessM);
        }
    }

    @Override
    public double lossPa(double flowM3PerS, LiquidState liquid) {
        double speedMPerS = FlowRange.checked(flowM3PerS) / Bore.areaM2(boreM);
        double dynamicPa = 0.5 * liquid.densityKgPerM3() * speedMPerS * speedMPerS;
        double reynolds = liquid.densityKgPerM3() * speedMPerS * boreM / liquid.viscosityPaS();
        if (reynolds <= TubeFriction.RE_LAMINAR_MAX) {
            return TubeFriction.LAMINAR / 2 * liquid.viscosityPaS() * lengthM * speedMPerS / (boreM * boreM);
        }
        return TubeFriction.darcy(reynolds, roughnessM / boreM) * lengthM / boreM * dynamicPa;
    }
}
