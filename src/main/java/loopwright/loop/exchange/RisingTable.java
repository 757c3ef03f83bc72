package loopwright.loop.exchange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A function that never falls, tabulated once and read fast.
 *
 * <p><b>Units.</b> Those of the function.
 *
 * <p><b>Valid for</b> x of 0 and more; past the table it goes on straight with its last slope.
 *
 * <p><b>Accuracy.</b> Exact at the nodes; between them within 1e-3 of a smooth function with bends only at the places given
 * (checked in CoreInAirTest, where it is better than 2e-4), and never outside the two nodes' values.
 *
 * <p><b>Source.</b> Piecewise cubic Hermite polynomials; inner slopes by [FritschButland1984], end slopes by the three-point
 * formula, at most three times the chord ([FritschCarlson1980]). Each piece between two bends has its own slopes.
 */
final class RisingTable {

    /** Nodes over the whole table, spaced evenly in √x; common practice, no source. */
    private static final int NODES = 96;

    /** Fewest intervals between two bends; common practice, no source. */
    private static final int INTERVALS_MIN = 8;

    /** Where each node begins, and the last one's end. */
    private final double[] xs;

    private final double[] ys;

    /** Linear, quadratic and cubic coefficients of each interval. */
    private final double[] coefficients;

    /** First interval that reaches into each of the even steps in √x. */
    private final int[] guide;

    private final double stepsPerRoot;

    /**
     * A table of a function.
     *
     * @param function never falls on [0, end]
     * @param bends where its slope jumps, in any order; those outside (0, end) do not count
     */
    RisingTable(DoubleUnaryOperator function, List<Double> bends, double end) {
        List<Double> x = new ArrayList<>(List.of(0.0));
        List<Integer> starts = new ArrayList<>(List.of(0));
        double before = 0;
        for (double bend : ends(bends, end)) {
            addPiece(x, before, bend, end);
            starts.add(x.size() - 1);
            before = bend;
        }
        xs = x.stream().mapToDouble(Double::doubleValue).toArray();
        ys = new double[xs.length];
        for (int i = 0; i < xs.length; i++) {
            ys[i] = Math.max(function.applyAsDouble(xs[i]), i == 0 ? Double.NEGATIVE_INFINITY : ys[i - 1]);
        }
        coefficients = new double[3 * (xs.length - 1)];
        for (int i = 0; i + 1 < starts.size(); i++) {
            fill(starts.get(i), starts.get(i + 1));
        }
        stepsPerRoot = NODES / Math.sqrt(end);
        guide = guide();
    }

    /** The value at x, at least 0. */
    double at(double x) {
        if (!(x >= 0)) {
            throw new IllegalArgumentException("x must be at least 0 but was " + x);
        }
        int last = xs.length - 1;
        if (x >= xs[last]) {
            return ys[last] + (x - xs[last]) * endSlope();
        }
        int i = interval(x);
        double d = x - xs[i];
        int c = 3 * i;
        double y = ys[i] + d * (coefficients[c] + d * (coefficients[c + 1] + d * coefficients[c + 2]));
        return Math.min(ys[i + 1], Math.max(ys[i], y));
    }

    /** How fast it rises at x, at least 0. */
    double slopeAt(double x) {
        if (!(x >= 0)) {
            throw new IllegalArgumentException("x must be at least 0 but was " + x);
        }
        if (x >= xs[xs.length - 1]) {
            return endSlope();
        }
        int i = interval(x);
        double d = x - xs[i];
        int c = 3 * i;
        return Math.max(0, coefficients[c] + d * (2 * coefficients[c + 1] + d * 3 * coefficients[c + 2]));
    }

    private int interval(double x) {
        int i = guide[(int) (stepsPerRoot * Math.sqrt(x))];
        while (x > xs[i + 1]) {
            i++;
        }
        return i;
    }

    private double endSlope() {
        int last = xs.length - 1;
        double d = xs[last] - xs[last - 1];
        int c = 3 * (last - 1);
        return coefficients[c] + d * (2 * coefficients[c + 1] + d * 3 * coefficients[c + 2]);
    }

    private static List<Double> ends(List<Double> bends, double end) {
        List<Double> ends = new ArrayList<>(bends.stream()
                .filter(bend -> bend > 0 && bend < end)
                .distinct()
                .sorted()
                .toList());
        ends.add(end);
        return ends;
    }

    private static void addPiece(List<Double> x, double from, double to, double end) {
        double low = Math.sqrt(from);
        double high = Math.sqrt(to);
        int intervals = Math.max(INTERVALS_MIN, (int) Math.ceil(NODES * (high - low) / Math.sqrt(end)));
        for (int i = 1; i < intervals; i++) {
            double root = low + (high - low) * i / intervals;
            x.add(root * root);
        }
        x.add(to);
    }

    /** For each even step in √x the interval its start lies in, one step early for the last digit's sake. */
    private int[] guide() {
        int[] first = new int[NODES + 1];
        int i = 0;
        for (int step = 0; step <= NODES; step++) {
            double root = Math.max(0, step - 1) / stepsPerRoot;
            while (i + 2 < xs.length && xs[i + 1] < root * root) {
                i++;
            }
            first[step] = i;
        }
        return first;
    }

    /** Coefficients of the piece between two nodes. */
    private void fill(int from, int to) {
        double[] width = new double[to - from];
        double[] chord = new double[to - from];
        for (int i = 0; i < width.length; i++) {
            width[i] = xs[from + i + 1] - xs[from + i];
            chord[i] = (ys[from + i + 1] - ys[from + i]) / width[i];
        }
        double[] slope = slopes(width, chord);
        for (int i = 0; i < width.length; i++) {
            int c = 3 * (from + i);
            coefficients[c] = slope[i];
            coefficients[c + 1] = (3 * chord[i] - 2 * slope[i] - slope[i + 1]) / width[i];
            coefficients[c + 2] = (slope[i] + slope[i + 1] - 2 * chord[i]) / (width[i] * width[i]);
        }
    }

    private static double[] slopes(double[] width, double[] chord) {
        int n = width.length;
        double[] slope = new double[n + 1];
        Arrays.setAll(slope, i -> i == 0 || i == n ? 0 : innerSlope(width[i - 1], chord[i - 1], width[i], chord[i]));
        slope[0] = outerSlope(width[0], chord[0], width[1], chord[1]);
        slope[n] = outerSlope(width[n - 1], chord[n - 1], width[n - 2], chord[n - 2]);
        return slope;
    }

    private static double innerSlope(double widthBefore, double chordBefore, double widthAfter, double chordAfter) {
        if (chordBefore <= 0 || chordAfter <= 0) {
            return 0;
        }
        double before = 2 * widthAfter + widthBefore;
        double after = widthAfter + 2 * widthBefore;
        return (before + after) / (before / chordBefore + after / chordAfter);
    }

    private static double outerSlope(double width, double chord, double nextWidth, double nextChord) {
        double slope = ((2 * width + nextWidth) * chord - width * nextChord) / (width + nextWidth);
        return Math.max(0, Math.min(3 * chord, slope));
    }
}
