package loopwright.loop;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** Straight lines through the points of a sheet; 0 beyond the last. */
final class OnSheet {

    private OnSheet() {}

    static <P> double line(List<P> points, ToDoubleFunction<P> x, ToDoubleFunction<P> y, double at) {
        for (int i = 1; i < points.size(); i++) {
            P before = points.get(i - 1);
            P after = points.get(i);
            if (at <= x.applyAsDouble(after)) {
                double share = (at - x.applyAsDouble(before)) / (x.applyAsDouble(after) - x.applyAsDouble(before));
                return y.applyAsDouble(before) + share * (y.applyAsDouble(after) - y.applyAsDouble(before));
            }
        }
        return 0;
    }
}
