package loopwright.workshop.money;

import loopwright.catalog.standard.WorkStage;

/**
 * The minutes of a stage by the three-point rule: likely = (low + 4·mid + high)/6, spread = (high − low)/6.
 *
 * <p>Unit: minutes, and sixths of minutes where a fraction would round.
 *
 * @param midMin what is planned
 * @param likelySixthMin six times the likely minutes
 * @param spreadSixthMin six times the spread
 */
public record StageHours(
        WorkStage stage, int lowMin, int midMin, int highMin, long likelySixthMin, long spreadSixthMin) {

    /** Parts in a minute. */
    static final int SIXTHS = 6;

    private static final int WEIGHT_MID = 4;
    private static final int PERCENT = 100;

    /** The three points from shares of what is planned, rounded half up to whole minutes. */
    static StageHours of(WorkStage stage, int midMin, int lowPercent, int highPercent) {
        int low = Math.floorDiv(2 * midMin * lowPercent + PERCENT, 2 * PERCENT);
        int high = Math.floorDiv(2 * midMin * highPercent + PERCENT, 2 * PERCENT);
        return new StageHours(stage, low, midMin, high, low + (long) WEIGHT_MID * midMin + high, high - low);
    }

    /** The likely minutes. */
    public double likelyMin() {
        return (double) likelySixthMin / SIXTHS;
    }
}
