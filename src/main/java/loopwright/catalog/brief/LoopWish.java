package loopwright.catalog.brief;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.part.Coolant;

/** What the loop is made of. Roles left out may be any of the catalogue. */
public record LoopWish(
        Optional<Choice> radiators,
        Optional<Choice> fans,
        Optional<Choice> pumps,
        Optional<Choice> reservoirs,
        Choice tube,
        @Limits(min = 0.2, max = 20) double tubeM,
        Choice coolant,
        @Limits(min = 0.1, max = 20) double coolantL,
        Optional<Run> run,
        Optional<Choice> fittings,
        List<Coolant.Biocide> addedBiocides) {

    /** A loop to which nothing is added. */
    public LoopWish(
            Optional<Choice> radiators,
            Optional<Choice> fans,
            Optional<Choice> pumps,
            Optional<Choice> reservoirs,
            Choice tube,
            double tubeM,
            Choice coolant,
            double coolantL,
            Optional<Run> run,
            Optional<Choice> fittings) {
        this(radiators, fans, pumps, reservoirs, tube, tubeM, coolant, coolantL, run, fittings, List.of());
    }

    /** A loop of whatever fittings its tube takes. */
    public LoopWish(
            Optional<Choice> radiators,
            Optional<Choice> fans,
            Optional<Choice> pumps,
            Optional<Choice> reservoirs,
            Choice tube,
            double tubeM,
            Choice coolant,
            double coolantL,
            Optional<Run> run) {
        this(radiators, fans, pumps, reservoirs, tube, tubeM, coolant, coolantL, run, Optional.empty(), List.of());
    }

    /**
     * How the loop runs.
     *
     * @param blocks whether the coolant passes the blocks one after the other, or divides between them
     * @param pumpDutyPercent duty of the pump; left out, the trade's 60 %
     */
    public record Run(
            Optional<BlockOrder> blocks,
            @Limits(min = 5, max = 100) Optional<Integer> pumpDutyPercent) {

        /** Nothing said. */
        public static final Run USUAL = new Run(Optional.empty(), Optional.empty());
    }

    /** How the blocks stand in the loop. */
    public enum BlockOrder {
        /** One after the other. */
        SERIES,
        /** Side by side. */
        PARALLEL
    }
}
