package loopwright.fit.rules;

import java.util.List;
import java.util.Locale;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Supply;
import loopwright.catalog.standard.Practice;
import loopwright.power.Load;
import loopwright.power.LoadParts;
import loopwright.power.Surge;

/**
 * The supply stands the card's burst and the processor's peak at once; one that does not say what it stands is not asked.
 *
 * <p>Scaled unit: milliwatts × percent, so that the sum is exact and fits an int (3 kW × 400 % is 1.2e9).
 *
 * @param practice bursts and peaks of parts that do not say
 * @param alwaysMilliW drives and small parts, milliwatts
 */
public record SupplyStandsSurge(Practice practice, int alwaysMilliW) implements PartRule.SumRule {

    private static final int WHOLE = 100;

    /** More than any burst, mW × percent: of a supply that is not asked. */
    private static final int ENOUGH = 1_900_000_000;

    @Override
    public String id() {
        return "electric.surge";
    }

    @Override
    public String statement() {
        return String.format(
                Locale.ROOT,
                "the supply stands the card's burst and the processor's peak (where they say nothing %d %% and %d %% of their"
                        + " worst), %.1f W of drives and small parts and all else at worst, for 100 us",
                practice.plannedElectric().draw().cardBurstPercent(),
                practice.plannedElectric().draw().processorPeakPercent(),
                LoadParts.watts(alwaysMilliW));
    }

    @Override
    public List<Role> roles() {
        return List.of(Role.BOARD, Role.PROCESSOR, Role.CARD, Role.SUPPLY, Role.PUMP);
    }

    @Override
    public int contribution(Role role, Part part) {
        if (part instanceof Supply supply) {
            return supply.rails()
                    .flatMap(Supply.Rails::surgePercent)
                    .map(p -> Math.toIntExact(Surge.stoodScaled(supply.output(), p)))
                    .orElse(ENOUGH);
        }
        if (part instanceof Processor processor) {
            return -Math.toIntExact(Surge.processorScaled(processor, practice));
        }
        if (part instanceof GraphicsCard card) {
            return -Math.toIntExact(Surge.cardScaled(card, practice));
        }
        return -Math.multiplyExact(Math.toIntExact(Load.worstMilliwatts(part)), WHOLE);
    }

    @Override
    public int constant() {
        return -Math.multiplyExact(alwaysMilliW, WHOLE);
    }
}
