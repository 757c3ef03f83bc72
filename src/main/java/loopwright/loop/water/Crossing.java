package loopwright.loop.water;

import java.util.function.Supplier;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathRuntimeException;

/**
 * Where a function that falls from above 0 to below 0 crosses it.
 *
 * <p><b>Accuracy.</b> 1e-13 of the crossing, as far as the function's own rounding goes; crossings below 1e-24 of the upper
 * end count as that.
 *
 * <p><b>Source.</b> Brent's method with inverse parabolas, always bracketed (Hipparchus).
 */
final class Crossing {

    /** Accuracy, relative. */
    private static final double ACCURACY = 1e-13;

    /** Accuracy over the upper end: near nothing, where a relative one would never be reached. */
    private static final double ACCURACY_AT_ZERO = 1e-24;

    /** A value that counts as 0: none but 0, whatever the function's unit. */
    private static final double VALUE_ACCURACY = Double.MIN_NORMAL;

    /** Order of the inverse polynomial: for these curves higher ones take no fewer evaluations. */
    private static final int ORDER = 2;

    /** Most evaluations: ten are usual, a function that jumps takes about 100. */
    private static final int EVALUATIONS_MAX = 500;

    private Crossing() {}

    /**
     * Returns where the function crosses 0, from 0 to the upper end.
     *
     * @param falling at least 0 at 0, at most 0 at the upper end
     * @param upper end of the search, above 0
     * @param start where to look first, between the ends
     * @param inputs what a message of failure tells of the case
     * @throws IllegalStateException if there is no crossing, with evaluations, last value and inputs
     */
    static double find(UnivariateFunction falling, double upper, double start, Supplier<String> inputs) {
        Followed followed = new Followed(falling, new double[2]);
        BracketingNthOrderBrentSolver solver =
                new BracketingNthOrderBrentSolver(ACCURACY, upper * ACCURACY_AT_ZERO, VALUE_ACCURACY, ORDER);
        try {
            return solver.solve(EVALUATIONS_MAX, followed, 0, upper, start);
        } catch (MathRuntimeException e) {
            throw new IllegalStateException(
                    "no crossing found from 0 to " + upper + " in " + solver.getEvaluations()
                            + " evaluations, the last " + followed.last()[1] + " at " + followed.last()[0] + "; "
                            + inputs.get(),
                    e);
        }
    }

    /** A function whose last argument and value are kept, for a message of failure. */
    private static final class Followed implements UnivariateFunction {
        private final UnivariateFunction function;
        private final double[] last;

        Followed(UnivariateFunction function, double[] last) {
            this.function = function;
            this.last = last;
        }

        @Override
        public double value(double x) {
            double value = function.value(x);
            last[0] = x;
            last[1] = value;
            return value;
        }

        double[] last() {
            return last;
        }
    }
}
