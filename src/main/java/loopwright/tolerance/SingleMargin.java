package loopwright.tolerance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The probability that a sum of independent deviations, some normal, some rectangular, is not below a limit; in closed form.
 *
 * <p>With n rectangular ones of half widths a_i and a normal one of standard deviation σ, the sum lies below x with
 * probability Σ_s (Π s_i)·G_n(x + Σ s_i·a_i) / Π 2a_i over all signs s, where G_n is the normal curve integrated n times (for
 * σ = 0: x^n/n! above 0). It is the convolution written out.
 *
 * <p><b>Accuracy.</b> 1e-9. Rectangular ones that are small against the whole, and the smallest beyond eight, are taken as
 * normal ones of the same variance; that is not felt before the seventh decimal.
 */
final class SingleMargin {

    /** Beyond so many rectangular deviations their sum is normal for all that can be seen. */
    private static final int RECTANGULAR_MAX = 8;

    /** A rectangular deviation smaller than this share of the whole's standard deviation is as good as normal. */
    private static final double SMALL = 0.05;

    private SingleMargin() {}

    /**
     * The probability that the limit is kept.
     *
     * @param limit how far the deviations may go down together, any sign
     * @param sigma standard deviation of the normal ones together, ≥ 0
     * @param halfWidths of the rectangular ones, each above 0
     */
    static double probability(double limit, double sigma, List<Double> halfWidths) {
        double[] sorted = halfWidths.stream().mapToDouble(a -> a).sorted().toArray();
        double variance =
                sigma * sigma + Arrays.stream(sorted).map(a -> a * a / 3).sum();
        double normal = sigma * sigma;
        List<Double> wide = new ArrayList<>();
        for (int i = 0; i < sorted.length; i++) {
            if (sorted[i] < SMALL * Math.sqrt(variance) || sorted.length - i > RECTANGULAR_MAX) {
                normal += sorted[i] * sorted[i] / 3;
            } else {
                wide.add(sorted[i]);
            }
        }
        if (wide.isEmpty()) {
            return normal > 0 ? NormalCurve.below(limit / Math.sqrt(normal)) : limit >= 0 ? 1 : 0;
        }
        return convolved(limit, Math.sqrt(normal), wide);
    }

    private static double convolved(double limit, double sigma, List<Double> wide) {
        int n = wide.size();
        double sum = 0;
        for (int signs = 0; signs < 1 << n; signs++) {
            double x = limit;
            int sign = 1;
            for (int i = 0; i < n; i++) {
                boolean up = (signs >> i & 1) == 1;
                x += up ? wide.get(i) : -wide.get(i);
                sign = up ? sign : -sign;
            }
            sum += sign * integrated(x, sigma, n);
        }
        for (double a : wide) {
            sum /= 2 * a;
        }
        return Math.min(1, Math.max(0, sum));
    }

    /** The normal curve's share below x, integrated n times. */
    private static double integrated(double x, double sigma, int n) {
        if (sigma == 0) {
            double power = 1;
            for (int i = 1; i <= n; i++) {
                power *= Math.max(x, 0) / i;
            }
            return power;
        }
        double z = x / sigma;
        double before = NormalCurve.density(z);
        double now = NormalCurve.below(z);
        double scale = 1;
        for (int i = 1; i <= n; i++) {
            double next = (z * now + before) / i;
            before = now;
            now = next;
            scale *= sigma;
        }
        return now * scale;
    }
}
