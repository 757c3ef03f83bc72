package loopwright.catalog.standard;

import loopwright.catalog.basis.Limits;

/** What the trade plans electrics with; common practice, no published source unless the file names one. */
public record PracticeElectric(Draw draw, Plugs plugs, Headers headers) {

    /** What holds where a practice says nothing: the numbers of {@code shared/practice.yaml}. */
    public static final PracticeElectric USUAL =
            new PracticeElectric(new Draw(10, 15, 200, 150, 150), new Plugs(225, 235, 8), new Headers(1, 80, 1.5, 60));

    /**
     * What parts draw that do not say.
     *
     * @param miscLowW of the small parts' heat, what comes from 5 V and 3.3 V
     * @param idlePercent of its worst draw, what a processor, a card or a board draws with nothing to do
     * @param cardBurstPercent of its worst draw, what a card draws for less than a millisecond
     * @param processorPeakPercent of its worst draw, what a processor draws for 10 ms at most
     * @param oldSupplyReserveW beyond the worst loads, for a supply built before surges were asked for
     */
    public record Draw(
            @Limits(min = 0, max = 200) double miscLowW,
            @Limits(min = 0, max = 100) double idlePercent,
            @Limits(min = 100, max = 400) int cardBurstPercent,
            @Limits(min = 100, max = 300) int processorPeakPercent,
            @Limits(min = 0, max = 1000) double oldSupplyReserveW) {}

    /**
     * What plugs are planned to carry.
     *
     * @param cardOwnCableW draw above which each 8-pin plug of a card gets a cable of its own
     * @param processorPlugW through one 8-pin plug of a processor
     * @param peripheralA through a pin of the older 4-pin drive plug
     */
    public record Plugs(
            @Limits(min = 0, max = 1000) double cardOwnCableW,
            @Limits(min = 50, max = 500) double processorPlugW,
            @Limits(min = 1, max = 20) double peripheralA) {}

    /**
     * How a board's headers are planned.
     *
     * @param limitA of a header that does not say
     * @param usePercent how much of its limit a header, splitter or hub is given at most, fans starting
     * @param startFactor what a fan or a pump draws while it starts, over what it draws at full speed
     * @param pumpDutyMinPercent least fixed duty of a pump on a header
     */
    public record Headers(
            @Limits(min = 0.1, max = 5) double limitA,
            @Limits(min = 10, max = 100) int usePercent,
            @Limits(min = 1, max = 5) double startFactor,
            @Limits(min = 5, max = 100) int pumpDutyMinPercent) {}
}
