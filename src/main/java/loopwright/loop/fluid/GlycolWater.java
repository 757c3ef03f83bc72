package loopwright.loop.fluid;

/**
 * Water with propylene or ethylene glycol of one mass fraction.
 *
 * <p><b>Units.</b> Temperature in °C, glycol by mass (or volume where the name says so), 0 to 1; results in SI.
 *
 * <p><b>Valid for</b> 0 to 0.60 by mass and 10 to 70 °C. From 0 to 100 °C the functions are smooth and positive; beyond, the
 * value of the nearer end holds. Inhibitors are left out. Towards no glycol it does not meet {@link Water} exactly: at 10 to
 * 70 °C density and heat capacity are within 0.1 %, viscosity within 2 %, conductivity within 0.6 %.
 *
 * <p><b>Accuracy.</b> Against the volume tables of [ASHRAEBrines], 20 to 50 % by volume, 20 to 50 °C: viscosity within 5 %
 * (6.5 % at the ends of both ranges), density within 0.5 % (0.75 %), heat capacity within 1 % (1.3 %), conductivity within
 * 1 %; checked in GlycolTablesTest. The freezing points of the two agree within 1.6 K.
 *
 * <p><b>Source.</b> [Melinder2010]; the fraction's polynomials are worked out once, in the constructor.
 */
public final class GlycolWater implements Liquid {

    /** Largest mass fraction of the source, dimensionless, [Melinder2010]. */
    private static final double MASS_FRACTION_MAX = 0.60;

    /** Viscosity that the source takes the logarithm of, Pa·s: 1 mPa·s. */
    private static final double VISCOSITY_UNIT_PA_S = 1e-3;

    private final Glycol glycol;
    private final double massFraction;
    private final double baseC;
    private final Polynomial density;
    private final Polynomial heatCapacity;
    private final Polynomial conductivity;
    private final Polynomial lnViscosity;
    private final double freezingC;

    /**
     * A mixture known by mass.
     *
     * @param massFraction of glycol, 0 to 0.60
     * @throws IllegalArgumentException if the fraction is outside its range, or NaN
     */
    public GlycolWater(Glycol glycol, double massFraction) {
        if (!(massFraction >= 0 && massFraction <= MASS_FRACTION_MAX)) {
            throw new IllegalArgumentException("mass fraction must be in [0, 0.6] but was " + massFraction);
        }
        MelinderFit fit = MelinderFit.of(glycol);
        this.glycol = glycol;
        this.massFraction = massFraction;
        baseC = fit.baseC();
        density = fit.density().at(massFraction);
        heatCapacity = fit.heatCapacity().at(massFraction);
        conductivity = fit.conductivity().at(massFraction);
        lnViscosity = fit.lnViscosity().at(massFraction);
        freezingC = MelinderFit.freezing(glycol).at(massFraction).at(0);
    }

    /**
     * A mixture known by volume.
     *
     * @param volumeFraction of glycol, 0 to 0.60 (propylene) or 0.578 (ethylene)
     * @throws IllegalArgumentException if the fraction is outside its range, or NaN
     */
    public static GlycolWater ofVolume(Glycol glycol, double volumeFraction) {
        return new GlycolWater(glycol, glycol.massFraction(volumeFraction));
    }

    /** The glycol in it. */
    public Glycol glycol() {
        return glycol;
    }

    /** How much of its mass is glycol, 0 to 0.60. */
    public double massFraction() {
        return massFraction;
    }

    @Override
    public double densityKgPerM3(double temperatureC) {
        return density.at(overBaseK(temperatureC));
    }

    @Override
    public double heatCapacityJPerKgK(double temperatureC) {
        return heatCapacity.at(overBaseK(temperatureC));
    }

    @Override
    public double viscosityPaS(double temperatureC) {
        return VISCOSITY_UNIT_PA_S * StrictMath.exp(lnViscosity.at(overBaseK(temperatureC)));
    }

    @Override
    public double conductivityWPerMK(double temperatureC) {
        return conductivity.at(overBaseK(temperatureC));
    }

    @Override
    public double freezingC() {
        return freezingC;
    }

    @Override
    public String toString() {
        return "water with " + 100 * massFraction + " % " + glycol + " by mass";
    }

    private double overBaseK(double temperatureC) {
        return LiquidRange.clampedC(temperatureC) - baseC;
    }
}
