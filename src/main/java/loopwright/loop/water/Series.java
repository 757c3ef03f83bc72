package loopwright.loop.water;

import java.util.List;

/**
 * Passages one behind the other: the same flow through all, and their losses add.
 *
 * @param passages at least one, in any order
 */
public record Series(List<Passage> passages) implements Passage {

    /** Checks that there is one. */
    public Series {
        if (passages.isEmpty()) {
            throw new IllegalArgumentException("a series needs a passage");
        }
        passages = List.copyOf(passages);
    }

    @Override
    public double lossPa(double flowM3PerS, LiquidState liquid) {
        double sumPa = 0;
        for (Passage each : passages) {
            sumPa += each.lossPa(flowM3PerS, liquid);
        }
        return sumPa;
    }

    @Override
    public LossCurve in(LiquidState liquid) {
        LossCurve[] curves = curves(passages, liquid);
        return flowM3PerS -> {
            double sumPa = 0;
            for (LossCurve each : curves) {
                sumPa += each.lossPa(flowM3PerS);
            }
            return sumPa;
        };
    }

    /** Each passage's curve for one liquid, in their order. */
    static LossCurve[] curves(List<Passage> passages, LiquidState liquid) {
        LossCurve[] curves = new LossCurve[passages.size()];
        for (int i = 0; i < curves.length; i++) {
            curves[i] = passages.get(i).in(liquid);
        }
        return curves;
    }
}
