package loopwright.tolerance;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import loopwright.geometry.Sum;
import loopwright.quantity.Dimension;
import loopwright.quantity.Distribution;
import loopwright.quantity.Known;

/** Tolerance stacks for tests, and plain sampling of them that shares no code with what is tested. */
final class Stacks {

    private Stacks() {}

    static Dimension normal(int plusMinusHmm) {
        return new Dimension(1000, plusMinusHmm, Known.MEASURED, Distribution.NORMAL);
    }

    static Dimension rectangular(int plusMinusHmm) {
        return new Dimension(1000, plusMinusHmm, Known.MEASURED, Distribution.RECTANGULAR);
    }

    /** A margin with so many halves of each named dimension. */
    static AxisMargin margin(int nominalHmm, String floor, Map<String, Integer> halves, Map<String, Dimension> all) {
        Sum sum = Sum.ZERO;
        for (Map.Entry<String, Integer> one : new TreeMap<>(halves).entrySet()) {
            sum = sum.plusHalves(one.getValue(), one.getKey(), all.getOrDefault(one.getKey(), Dimension.UNKNOWN));
        }
        return AxisMargin.between(nominalHmm, sum, Sum.ZERO, floor);
    }

    /** A margin of one dimension. */
    static AxisMargin single(int nominalHmm, String name, Dimension dimension) {
        return margin(nominalHmm, name + " floor", Map.of(name, 2), Map.of(name, dimension));
    }

    static BoxMargin any(AxisMargin... axes) {
        return new BoxMargin(List.of(axes));
    }

    static double chance(List<BoxMargin> boxes) {
        return new FitProbability().ofAll(boxes).orElseThrow();
    }

    /** The share of drawn machines in which all hold: one draw a dimension, however often it counts. */
    static double sampled(List<BoxMargin> boxes, int draws, long seed) {
        Random random = new Random(seed);
        int kept = 0;
        for (int i = 0; i < draws; i++) {
            Map<String, Double> off = new TreeMap<>();
            boolean all = true;
            for (BoxMargin box : boxes) {
                boolean any = false;
                for (AxisMargin axis : box.axes()) {
                    any |= drawn(axis, off, random) >= 0;
                }
                all &= any;
            }
            kept += all ? 1 : 0;
        }
        return (double) kept / draws;
    }

    private static double drawn(AxisMargin axis, Map<String, Double> off, Random random) {
        double sum = axis.nominalHmm();
        double squares = 0;
        for (Sum.Term term : axis.terms()) {
            Dimension dimension = term.dimension();
            double unit = off.computeIfAbsent(
                    term.name(),
                    n -> dimension.distribution() == Distribution.NORMAL
                            ? random.nextGaussian() / 2
                            : 2 * random.nextDouble() - 1);
            double reach = term.halves() * 0.5 * dimension.plusMinusHmm();
            sum += unit * reach;
            squares += reach * reach;
        }
        if (squares < 2500) {
            double unit = off.computeIfAbsent(axis.floorName(), n -> random.nextGaussian() / 2);
            sum += unit * Math.sqrt(2500 - squares);
        }
        return sum;
    }

    /** Boxes with shared dimensions, drawn by a seed. */
    static List<BoxMargin> drawn(long seed) {
        Random random = new Random(seed);
        Map<String, Dimension> all = new TreeMap<>();
        int dimensions = 2 + random.nextInt(9);
        for (int i = 0; i < dimensions; i++) {
            int plusMinus = 10 + random.nextInt(150);
            all.put("d" + i, random.nextInt(4) == 0 ? rectangular(plusMinus) : normal(plusMinus));
        }
        List<BoxMargin> boxes = new ArrayList<>();
        int count = 1 + random.nextInt(7);
        for (int b = 0; b < count; b++) {
            List<AxisMargin> axes = new ArrayList<>();
            int ways = random.nextInt(3) == 0 ? 2 : 1;
            for (int a = 0; a < ways; a++) {
                Map<String, Integer> halves = new TreeMap<>();
                int terms = 1 + random.nextInt(4);
                for (int t = 0; t < terms; t++) {
                    int half = new int[] {-2, -1, 1, 2}[random.nextInt(4)];
                    halves.put("d" + random.nextInt(dimensions), half);
                }
                axes.add(margin(random.nextInt(200) - (ways == 2 ? 60 : 10), "floor " + b + " " + a, halves, all));
            }
            boxes.add(new BoxMargin(axes));
        }
        return boxes;
    }
}
