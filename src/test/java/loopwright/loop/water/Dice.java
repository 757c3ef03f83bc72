package loopwright.loop.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import loopwright.loop.water.FittingLoss.Kind;

/** Random passages, pumps and liquids of the size that loops have. */
final class Dice {

    private static final double LITRE_PER_MIN = 1e-3 / 60;

    private static final List<Kind> KINDS = List.of(Kind.values());

    private final Random random;

    Dice(long seed) {
        random = new Random(seed);
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    /** From water at 70 °C to strong glycol at 10 °C. */
    LiquidState liquid() {
        return new LiquidState(between(970, 1070), between(0.4e-3, 8e-3));
    }

    /** A pump with 3 to 60 kPa and 3 to 30 L/min, at any speed that turns. */
    PumpCurve pump() {
        double headPa = between(3e3, 60e3);
        double flow = between(3, 30) * LITRE_PER_MIN;
        double bend = between(1, 2);
        List<PumpCurve.Point> points = new ArrayList<>();
        int last = 1 + below(8);
        for (int i = 0; i <= last; i++) {
            double share = (double) i / last;
            points.add(new PumpCurve.Point(share * flow, headPa * (1 - Math.pow(share, bend))));
        }
        return new PumpCurve(points).atSpeed(between(0.2, 1));
    }

    Passage passage() {
        double bore = between(3e-3, 14e-3);
        return switch (below(5)) {
            case 0 -> new TubeRun(bore, between(0.05, 3), below(3) == 0 ? 0 : bore * between(0, 0.05));
            case 1 -> new FittingLoss(KINDS.get(below(KINDS.size())), bore, 1 + below(12));
            case 2 -> below(2) == 0 ? SuddenChange.inlet(bore) : new SuddenChange(bore, bore * between(1.1, 3));
            case 3 -> measured();
            default -> new Parallel(List.of(measured(), new TubeRun(bore, between(0.05, 3), 0)));
        };
    }

    List<Passage> passages(int most) {
        List<Passage> all = new ArrayList<>();
        int count = 1 + below(most);
        for (int i = 0; i < count; i++) {
            all.add(passage());
        }
        return all;
    }

    private MeasuredLoss measured() {
        List<MeasuredLoss.Point> points = new ArrayList<>();
        double flow = 0;
        double loss = 0;
        int count = 2 + below(6);
        for (int i = 0; i < count; i++) {
            points.add(new MeasuredLoss.Point(flow * LITRE_PER_MIN, loss));
            flow += between(0.2, 3);
            loss += between(50, 6000);
        }
        return new MeasuredLoss(points);
    }
}
