package loopwright.fit.rules;

import java.util.List;
import java.util.Locale;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Supply;
import loopwright.power.Load;
import loopwright.power.LoadParts;
import loopwright.power.RailBudget;

/**
 * The supply's 12 V carry everything at worst that is not on 5 V or 3.3 V; a supply that says nothing of its rails is not asked.
 *
 * <p>Scaled unit: milliwatts.
 *
 * @param alwaysMilliW of drives and small parts, what is on 12 V
 */
public record SupplyCarriesTwelveVolt(int alwaysMilliW) implements PartRule.SumRule {

    /** More than any machine draws, mW: of a supply that is not asked. */
    static final int ENOUGH_MILLI_W = 1_000_000_000;

    @Override
    public String id() {
        return "electric.twelve-volt";
    }

    @Override
    public String statement() {
        return String.format(
                Locale.ROOT,
                "the supply's 12 V carry the worst loads on 12 V, %.1f W of drives and small parts among them",
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
                    .map(r -> Math.toIntExact(RailBudget.twelveMilliW(r)))
                    .orElse(ENOUGH_MILLI_W);
        }
        return -Math.toIntExact(Load.worstMilliwatts(part));
    }

    @Override
    public int constant() {
        return -alwaysMilliW;
    }
}
