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
        return in(liquid).lossPa(flowM3PerS);
    }

    /** Re, the laminar loss and ρV²/2 are the flow, and its square, times what does not change with it. */
    @Override
    public LossCurve in(LiquidState liquid) {
        double areaM2 = Bore.areaM2(boreM);
        double reynoldsPerFlow = liquid.densityKgPerM3() * boreM / (areaM2 * liquid.viscosityPaS());
        double laminar = TubeFriction.LAMINAR / 2 * liquid.viscosityPaS() * lengthM / (areaM2 * boreM * boreM);
        double quadratic = lengthM / boreM * Bore.dynamicPaPerFlow2(boreM, liquid);
        double relRoughness = roughnessM / boreM;
        return flowM3PerS -> {
            double reynolds = reynoldsPerFlow * FlowRange.checked(flowM3PerS);
            return reynolds <= TubeFriction.RE_LAMINAR_MAX
                    ? laminar * flowM3PerS
                    : TubeFriction.darcy(reynolds, relRoughness) * quadratic * flowM3PerS * flowM3PerS;
        };
    }
}
