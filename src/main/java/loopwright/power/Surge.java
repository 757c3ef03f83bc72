package loopwright.power;

import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Supply;
import loopwright.catalog.standard.Practice;

/**
 * A burst: card and processor at their peaks, all else at worst.
 *
 * <p><b>Units.</b> Milliwatts × percent (hundred thousandths of a watt): whole numbers, so that limits are exact.
 *
 * <p><b>Source.</b> Bursts of cards: PCI Express card electromechanical specification 5.0 allows up to 300 % for 100 µs, common
 * practice plans 160 to 200 %. Peaks of processors: desktop power supply design guide, document 336521, Table 2-1.
 *
 * @param cardScaled the card's
 * @param processorScaled the processor's
 * @param restScaled of all else
 */
public record Surge(long cardScaled, long processorScaled, long restScaled) {

    /** Whole, in percent. */
    private static final int WHOLE = 100;

    /** A scaled figure in a watt. */
    private static final double SCALE = 1e5;

    /** The card's burst. */
    public static long cardScaled(GraphicsCard card, Practice practice) {
        int burst = card.electric()
                .flatMap(GraphicsCard.Electric::burstPercent)
                .orElse(practice.plannedElectric().draw().cardBurstPercent());
        return Math.multiplyExact(Load.of(card).milliwatts(), burst);
    }

    /** The processor's peak. */
    public static long processorScaled(Processor processor, Practice practice) {
        return processor
                .electric()
                .map(e -> Math.multiplyExact(Load.milliwatts(e.peakW()), WHOLE))
                .orElseGet(() -> Math.multiplyExact(
                        Load.of(processor).milliwatts(),
                        practice.plannedElectric().draw().processorPeakPercent()));
    }

    /** What a supply stands, of a share of its rating. */
    public static long stoodScaled(Supply.Output output, int surgePercent) {
        return Math.multiplyExact(Load.milliwatts(output.ratedW()), surgePercent);
    }

    /** All of it. */
    public long scaled() {
        return cardScaled + processorScaled + restScaled;
    }

    /** A scaled figure in watts. */
    public static double watts(long scaled) {
        return scaled / SCALE;
    }
}
