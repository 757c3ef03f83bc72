package loopwright.catalog.standard;

import java.util.List;
import loopwright.catalog.basis.Limits;

/** Published electrical limits; each row names its source in the file. */
public record StandardElectric(
        CardFeeds card,
        SataPlug sata,
        FanPlug fan,
        List<Excursion> excursions,
        List<ProcessorPeak> processorPeaks,
        List<EfficiencyLevel> efficiency) {

    /**
     * What a card may draw through each way that feeds it, sustained.
     *
     * @param codings what a 16-pin plug may be coded for
     */
    public record CardFeeds(
            double slotW, double sixPinW, double eightPinW, double sixteenPinW, List<Coding> codings, String source) {}

    /** A coding of the 16-pin plug. */
    public record Coding(double powerW) {}

    /** A SATA power plug: current of one contact, and contacts for each voltage. */
    public record SataPlug(double contactA, int contacts, String source) {}

    /** A 4-wire fan: its current at speed, and while it starts. */
    public record FanPlug(double steadyA, double startA, String source) {}

    /**
     * A burst that a supply stands, as a share of its rating.
     *
     * @param timeUs how long
     * @param dutyPercent how much of the time bursts may take, with the load between them lower
     */
    public record Excursion(
            @Limits(min = 100, max = 400) int loadPercent,
            @Limits(min = 1, max = 1e7) double timeUs,
            double dutyPercent,
            String source) {}

    /** What a class of processors draws at 12 V, by its power class. */
    public record ProcessorPeak(
            double classW,
            @Limits(min = 1, max = 100) double continuousA,
            @Limits(min = 1, max = 100) double peakA,
            String source) {}

    /** Least efficiency of a level at 20, 50 and 100 % of the rating. */
    public record EfficiencyLevel(
            String level, Mains mains, double lowPercent, double halfPercent, double fullPercent, String source) {}

    /** Mains at which efficiency was measured. */
    public enum Mains {
        /** 115 V. */
        V115,
        /** 230 V, inside a machine, Europe. */
        V230
    }
}
