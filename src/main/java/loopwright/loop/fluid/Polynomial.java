package loopwright.loop.fluid;

/** A polynomial c0 + c1·x + c2·x² + …; units are those of its user. */
final class Polynomial {

    private final double[] coefficients;

    /** A polynomial of these coefficients, the constant one first; at least one. */
    Polynomial(double... coefficients) {
        if (coefficients.length == 0) {
            throw new IllegalArgumentException("a polynomial needs at least one coefficient");
        }
        this.coefficients = coefficients.clone();
    }

    /** The value at x, by Horner's rule. */
    double at(double x) {
        double sum = coefficients[coefficients.length - 1];
        for (int i = coefficients.length - 2; i >= 0; i--) {
            sum = sum * x + coefficients[i];
        }
        return sum;
    }
}
