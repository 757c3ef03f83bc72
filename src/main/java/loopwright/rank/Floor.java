package loopwright.rank;

import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;

/** The least price, sound and lead time of some parts on a mount, and the least and most that any of them moves and conducts. */
final class Floor {

    private final Supplier<List<Draught>> draughts;
    private final Figures figures;
    private final double[] most;
    private final double[] least;
    private final double[] conductances;

    /**
     * What does not depend on the air.
     *
     * @param soundMillionths the least of any
     * @param fasterMillionths the loudest of any at the next duty up
     */
    record Figures(long cents, int leadDays, long soundMillionths, long fasterMillionths) {

        Figures with(Figures one) {
            return new Figures(
                    Math.min(cents, one.cents),
                    Math.min(leadDays, one.leadDays),
                    Math.min(soundMillionths, one.soundMillionths),
                    Math.max(fasterMillionths, one.fasterMillionths));
        }
    }

    private Floor(Supplier<List<Draught>> draughts, Figures figures) {
        this.draughts = draughts;
        this.figures = figures;
        this.most = unknown();
        this.least = unknown();
        this.conductances = unknown();
    }

    private static double[] unknown() {
        double[] out = new double[PressureSteps.count()];
        Arrays.fill(out, Double.NaN);
        return out;
    }

    /** The floor of some parts; their draughts are only asked for with the air. */
    static Floor of(Supplier<List<Draught>> draughts, Figures figures) {
        return new Floor(draughts, figures);
    }

    Figures figures() {
        return figures;
    }

    /** The most air that any moves at a step of help, m³/s. */
    double mostM3PerS(int help) {
        ask(help);
        return most[help];
    }

    /** The least air that any moves at a step of help, m³/s. */
    double leastM3PerS(int help) {
        ask(help);
        return least[help];
    }

    /** The most that any conducts at a step of help, W/K. */
    double mostWPerK(int help) {
        ask(help);
        return conductances[help];
    }

    private void ask(int help) {
        if (Double.isNaN(most[help])) {
            double high = 0;
            double low = Double.POSITIVE_INFINITY;
            double conducts = 0;
            for (Draught draught : draughts.get()) {
                high = Math.max(high, draught.flowM3PerS(help));
                low = Math.min(low, draught.flowM3PerS(help));
                conducts = Math.max(conducts, draught.conductanceWPerK(help));
            }
            most[help] = high;
            least[help] = low;
            conductances[help] = conducts;
        }
    }
}
