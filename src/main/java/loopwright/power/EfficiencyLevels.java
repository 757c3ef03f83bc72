package loopwright.power;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.part.Supply;
import loopwright.catalog.standard.StandardElectric.EfficiencyLevel;
import loopwright.catalog.standard.StandardElectric.Mains;

/** The published level of efficiency that a supply's sheet reaches at 20, 50 and 100 % of its rating. */
public final class EfficiencyLevels {

    private static final double LOW = 0.2;
    private static final double HALF = 0.5;

    private EfficiencyLevels() {}

    /** The highest level reached; none where the sheet has no points, or reaches none. */
    public static Optional<EfficiencyLevel> reached(Supply supply, List<EfficiencyLevel> levels, Mains mains) {
        if (supply.output().efficiency().isEmpty()) {
            return Optional.empty();
        }
        double ratedW = supply.output().ratedW();
        return levels.stream()
                .filter(l -> l.mains() == mains)
                .filter(l -> SupplyLoss.efficiencyPercent(supply, LOW * ratedW, 0) >= l.lowPercent()
                        && SupplyLoss.efficiencyPercent(supply, HALF * ratedW, 0) >= l.halfPercent()
                        && SupplyLoss.efficiencyPercent(supply, ratedW, 0) >= l.fullPercent())
                .reduce((one, other) -> other.halfPercent() >= one.halfPercent() ? other : one);
    }
}
