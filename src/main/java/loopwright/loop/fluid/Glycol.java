package loopwright.loop.fluid;

/**
 * The glycols that coolants are mixed with, and what a share by volume is by mass.
 *
 * <p><b>Units.</b> Fractions of the whole, 0 to 1.
 *
 * <p><b>Valid for</b> mass fractions from 0 to 0.60: volume fractions to 0.60 (propylene) and 0.578 (ethylene). Outside it is
 * refused. Volumes are those of the pure liquids before mixing, as sellers count them.
 *
 * <p><b>Accuracy.</b> The published pairs are rounded to 0.1 % by volume; straight lines between every fifth meet the others
 * within 0.15 %.
 *
 * <p><b>Source.</b> [ASHRAEBrines], read as tabulated in an open collection of fluid properties.
 */
public enum Glycol {
    /** Propylene glycol. */
    PROPYLENE(0, 4.8, 9.6, 14.5, 19.4, 24.4, 29.4, 34.4, 39.6, 44.7, 49.9, 55.0, 60.0),
    /** Ethylene glycol: poisonous. */
    ETHYLENE(0, 4.4, 8.9, 13.6, 18.1, 22.9, 27.7, 32.6, 37.5, 42.5, 47.6, 52.7, 57.8);

    /** The volumes below are at steps of 5 % by mass: steps from 0 to 1. */
    private static final int MASS_STEPS = 20;

    private static final double PERCENT = 100;

    private final VolumeByMass volumes;

    /** Volumes in percent at 0, 5, 10 … 60 % by mass, [ASHRAEBrines]. */
    Glycol(double... volumePercent) {
        double[] fractions = new double[volumePercent.length];
        for (int i = 0; i < fractions.length; i++) {
            fractions[i] = volumePercent[i] / PERCENT;
        }
        volumes = new VolumeByMass(MASS_STEPS, fractions);
    }

    /**
     * The mass fraction of a mixture that is known by volume.
     *
     * @param volumeFraction 0 to 0.60 (propylene) or 0.578 (ethylene)
     * @throws IllegalArgumentException if it is outside, or NaN
     */
    public double massFraction(double volumeFraction) {
        return volumes.mass(volumeFraction);
    }

    /**
     * The volume fraction of a mixture that is known by mass.
     *
     * @param massFraction 0 to 0.60
     * @throws IllegalArgumentException if it is outside, or NaN
     */
    public double volumeFraction(double massFraction) {
        return volumes.volume(massFraction);
    }
}
