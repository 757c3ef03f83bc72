package loopwright.catalog.standard;

import loopwright.catalog.basis.Limits;
import loopwright.catalog.part.Coolant;

/**
 * What loops are made of, by the trade; common practice, no published source.
 *
 * @param plasticTubeDesignC warmest coolant that rigid plastic tube is planned for
 * @param plasticTubeMaxC warmest coolant that it bears at all
 * @param thinChannelMm channels below it clog with particles
 * @param growthGlycolPercent glycol by mass from which little grows
 * @param usualSeal what rings are made of where nobody says
 * @param months longest time between changes by what colours the coolant
 */
public record MaterialPractice(
        @Limits(min = 20, max = 120) double plasticTubeDesignC,
        @Limits(min = 20, max = 120) double plasticTubeMaxC,
        @Limits(min = 0.05, max = 5) double thinChannelMm,
        @Limits(min = 0, max = 60) double growthGlycolPercent,
        Coolant.Seal usualSeal,
        Months months) {

    /** What stands in practice.yaml as delivered, for where it says nothing. */
    public static final MaterialPractice USUAL =
            new MaterialPractice(45, 60, 0.5, 25, Coolant.Seal.EPDM, new Months(24, 12, 6, 1));

    /** Months between changes, at most. */
    public record Months(
            @Limits(min = 1, max = 60) int clear,
            @Limits(min = 1, max = 60) int dyed,
            @Limits(min = 1, max = 60) int pigmented,
            @Limits(min = 1, max = 60) int glitter) {}
}
