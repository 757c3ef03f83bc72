package loopwright.catalog.brief;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Limits;

/** The limits a build has to keep. */
public record BriefLimits(
        @Limits(min = 0, max = 100_000_000) Optional<Long> budgetCents,
        @Limits(min = -10, max = 45) double roomC,
        @Limits(min = 10, max = 80) double coolantMaxC,
        @Limits(min = 5, max = 80) Optional<Double> noiseMaxDBA,
        @Limits(min = 0, max = 1000) Optional<Double> labourMaxH,
        @Limits(min = 0, max = 365) Optional<Integer> leadMaxDays,
        @Limits(min = 0, max = 1) double freeAreaMin,
        ModLimits mods,
        Optional<HeatLimits> heat) {

    /**
     * Where the machine stands, and what its parts may reach.
     *
     * @param altitudeM over the sea; thin air cools less
     * @param processorMaxC of the processor itself
     * @param cardMaxC of the card's chip
     * @param caseMaxC of the air inside
     */
    public record HeatLimits(
            @Limits(min = -400, max = 5000) Optional<Double> altitudeM,
            @Limits(min = 30, max = 110) Optional<Double> processorMaxC,
            @Limits(min = 30, max = 110) Optional<Double> cardMaxC,
            @Limits(min = 15, max = 90) Optional<Double> caseMaxC) {

        /** Nothing said: at the sea, no limits. */
        public static final HeatLimits NONE =
                new HeatLimits(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /**
     * What may be done to the case, and how sure it has to be that all fits.
     *
     * @param confidencePercent least chance that everything fits; what is below is marked, not dropped
     */
    public record ModLimits(
            List<String> forbid,
            @Limits(min = 0, max = 50) Optional<Integer> visibleCutsMax,
            @Limits(min = 0, max = 50) Optional<Integer> cutsMax,
            boolean noTightPlaces,
            @Limits(min = 1, max = 99.9) Optional<Double> confidencePercent) {

        /** Limits without a word on how sure. */
        public ModLimits(
                List<String> forbid,
                Optional<Integer> visibleCutsMax,
                Optional<Integer> cutsMax,
                boolean noTightPlaces) {
            this(forbid, visibleCutsMax, cutsMax, noTightPlaces, Optional.empty());
        }
    }
}
