package loopwright.loop.fluid;

/**
 * A property over temperature and mass fraction: Y = Σi Σj c[i][j]·(t − t0)^i·(x − x0)^j, [Melinder2010].
 *
 * <p>Rows may be shorter than the first: what is missing is 0.
 */
final class MelinderSurface {

    private final double baseFraction;
    private final double[][] coefficients;

    /**
     * A surface about a base.
     *
     * @param baseFraction x0, by mass
     * @param coefficients rows are powers of temperature, columns powers of mass fraction
     */
    MelinderSurface(double baseFraction, double[][] coefficients) {
        this.baseFraction = baseFraction;
        this.coefficients = new double[coefficients.length][];
        for (int i = 0; i < coefficients.length; i++) {
            this.coefficients[i] = coefficients[i].clone();
        }
    }

    /** What is left at one mass fraction: a polynomial in t − t0. */
    Polynomial at(double massFraction) {
        double[] collapsed = new double[coefficients.length];
        for (int i = 0; i < collapsed.length; i++) {
            collapsed[i] = new Polynomial(coefficients[i]).at(massFraction - baseFraction);
        }
        return new Polynomial(collapsed);
    }
}
