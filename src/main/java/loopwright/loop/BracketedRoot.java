package loopwright.loop;

/**
 * The root of a function that falls, between two ends: Newton's steps while they stay inside, halving otherwise.
 *
 * <p>Flows are asked for tens of thousands of times in one ranking, each from a good guess and with the slope at hand; that
 * takes two to four evaluations here, against ten and a handful of objects in a general root finder.
 *
 * <p><b>Units.</b> Those of the function.
 *
 * <p><b>Valid for</b> functions that fall strictly, with a root between the ends. <b>Accuracy.</b> About 1e-13 of the width asked
 * about.
 *
 * <p><b>Source.</b> Newton with bisection as a safeguard: any text on numerical methods.
 */
public final class BracketedRoot {

    /** A falling function and its slope at one place. */
    public interface Falling {
        /** Value at x. */
        double at(double x);

        /** Slope at x, below 0 wherever it counts. */
        double slopeAt(double x);
    }

    /** Largest last halving, as a share of the bracket's first width, dimensionless. */
    static final double STEP = 1e-13;

    /** Largest last step of Newton's: his next would be its square, so what is left is below 1e-14 of the width. */
    static final double NEWTON_STEP = 1e-7;

    /** Largest share of his last step that Newton's next has where he is about to arrive, dimensionless. */
    private static final double SHRINK = 1e-3;

    /** Most steps: halving alone would need 44 for {@link #STEP}. */
    private static final int STEPS_MAX = 120;

    private double low;
    private double high;

    private BracketedRoot(double low, double high) {
        this.low = low;
        this.high = high;
    }

    /**
     * Returns the root.
     *
     * @param what named in the message when it does not converge
     * @param guess where to start, anywhere
     * @throws IllegalArgumentException if the ends do not bracket a root
     * @throws ArithmeticException if it does not converge, with what, steps and ends
     */
    public static double of(String what, Falling function, double low, double high, double guess) {
        if (!(low < high)) {
            throw new IllegalArgumentException(what + ": no room between " + low + " and " + high);
        }
        return new BracketedRoot(low, high).find(what, function, guess);
    }

    private double find(String what, Falling function, double guess) {
        double width = high - low;
        double x = guess > low && guess < high ? guess : low + width / 2;
        double lastStep = width;
        int newtonSteps = 0;
        for (int i = 0; i < STEPS_MAX; i++) {
            double value = function.at(x);
            if (value > 0) {
                low = x;
            } else if (value < 0) {
                high = x;
            } else if (value == 0) { // exactly there: no step would move it
                return x;
            } else {
                break;
            }
            double newton = x - value / function.slopeAt(x);
            // Steps that do not halve go to and fro across the root, as where a square root starts: better halve.
            boolean inside = newton > low && newton < high && Math.abs(newton - x) < lastStep / 2;
            double next = inside ? newton : low + (high - low) / 2;
            double moved = Math.abs(next - x);
            // A small step may only say that the slope is steep here, as where a square root starts; that the root is
            // near shows in steps that shrink as Newton's do.
            boolean shrinks = inside && newtonSteps > 0 && moved <= SHRINK * lastStep;
            boolean there = moved <= (shrinks ? NEWTON_STEP : STEP) * width;
            newtonSteps = inside ? newtonSteps + 1 : 0;
            lastStep = inside ? moved : high - low;
            x = next;
            if (there) {
                return x;
            }
        }
        throw new ArithmeticException(
                what + " did not converge in " + STEPS_MAX + " steps: last between " + low + " and " + high);
    }
}
