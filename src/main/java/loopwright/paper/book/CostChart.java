package loopwright.paper.book;

import java.util.List;
import java.util.Locale;

/** Price against coolant temperature of builds, as dots; the one that is built is ringed. */
final class CostChart {

    private static final double WIDTH_MM = 150;
    private static final double HEIGHT_MM = 90;
    private static final double LEFT_MM = 18;
    private static final double BELOW_MM = 14;
    private static final double EDGE_MM = 6;
    private static final double TYPE_MM = 3;

    /** About as many ticks as an axis has. */
    private static final int TICKS = 6;

    private final List<Dot> dots;
    private final String currency;

    /**
     * A build.
     *
     * @param priceUnits price in whole units of the currency
     * @param chosen whether it is the one
     */
    record Dot(double priceUnits, double coolantC, boolean chosen) {}

    CostChart(List<Dot> dots, String currency) {
        this.dots = List.copyOf(dots);
        this.currency = currency;
    }

    String svg() {
        Scale price = Scale.of(dots.stream().mapToDouble(Dot::priceUnits).toArray());
        Scale heat = Scale.of(dots.stream().mapToDouble(Dot::coolantC).toArray());
        Drawing drawing = new Drawing("price against coolant temperature", WIDTH_MM, HEIGHT_MM);
        double bottom = HEIGHT_MM - BELOW_MM;
        double right = WIDTH_MM - EDGE_MM;
        for (double at = price.from; at <= price.to + price.step / 2; at += price.step) {
            double x = LEFT_MM + price.share(at) * (right - LEFT_MM);
            drawing.line(x, EDGE_MM, x, bottom, Drawing.stroke("#d5d9dd", 0.18));
            drawing.text(x, bottom + 4, TYPE_MM, "middle", String.format(Locale.ROOT, "%.0f", at));
        }
        for (double at = heat.from; at <= heat.to + heat.step / 2; at += heat.step) {
            double y = bottom - heat.share(at) * (bottom - EDGE_MM);
            drawing.line(LEFT_MM, y, right, y, Drawing.stroke("#d5d9dd", 0.18));
            drawing.text(LEFT_MM - 1.5, y + 1, TYPE_MM, "end", Drawing.n(at));
        }
        drawing.line(LEFT_MM, bottom, right, bottom, Drawing.stroke("#1c2024", Drawing.WIDE_MM));
        drawing.line(LEFT_MM, EDGE_MM, LEFT_MM, bottom, Drawing.stroke("#1c2024", Drawing.WIDE_MM));
        for (Dot dot : dots) {
            double x = LEFT_MM + price.share(dot.priceUnits()) * (right - LEFT_MM);
            double y = bottom - heat.share(dot.coolantC()) * (bottom - EDGE_MM);
            drawing.circle(x, y, 1.1, Drawing.filled("#3c6e8f", "#1c2024", 0.18));
            if (dot.chosen()) {
                drawing.circle(x, y, 2.4, Drawing.stroke("#b3261e", Drawing.WIDE_MM));
            }
        }
        drawing.text((LEFT_MM + right) / 2, HEIGHT_MM - 2, TYPE_MM, "middle", "price, " + currency);
        drawing.text(LEFT_MM + 2, EDGE_MM + 2.5, TYPE_MM, "start", "coolant, C");
        return drawing.svg();
    }

    /** An axis with round numbers round what it shows. */
    private record Scale(double from, double to, double step) {

        static Scale of(double... values) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (double value : values) {
                low = Math.min(low, value);
                high = Math.max(high, value);
            }
            double step = round(Math.max(high - low, 1) / TICKS);
            return new Scale(
                    Math.floor(low / step) * step, Math.ceil(high / step) * step + (low < high ? 0 : step), step);
        }

        /** 1, 2 or 5 times a power of ten, at least so much. */
        private static double round(double least) {
            double power = StrictMath.pow(10, StrictMath.floor(StrictMath.log10(least)));
            for (double factor : new double[] {1, 2, 5}) {
                if (factor * power >= least) {
                    return factor * power;
                }
            }
            return 10 * power;
        }

        double share(double value) {
            return (value - from) / (to - from);
        }
    }
}
