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
        ModLimits mods) {

    /** What may be done to the case. */
    public record ModLimits(
            List<String> forbid,
            @Limits(min = 0, max = 50) Optional<Integer> visibleCutsMax,
            @Limits(min = 0, max = 50) Optional<Integer> cutsMax,
            boolean noTightPlaces) {}
}
