package loopwright.fit.rules;

import java.util.List;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Supply;
import loopwright.power.Load;

/**
 * The supply is rated for the sum of the worst loads and a headroom.
 *
 * <p>Scaled unit: milliwatts × percent, so that the sum is exact and fits an int (3 kW × 200 % is 6e8).
 *
 * @param headroomPercent how much more than the sum
 * @param alwaysMilliW drives and small parts, milliwatts
 */
public record SupplyCarriesLoad(int headroomPercent, int alwaysMilliW) implements PartRule.SumRule {

    @Override
    public String id() {
        return "electric.load";
    }

    @Override
    public String statement() {
        return "the supply is rated for the sum of worst loads and " + headroomPercent + " %";
    }

    @Override
    public List<Role> roles() {
        return List.of(Role.BOARD, Role.PROCESSOR, Role.CARD, Role.SUPPLY, Role.PUMP);
    }

    @Override
    public int contribution(Role role, Part part) {
        if (part instanceof Supply supply) {
            return Math.multiplyExact(
                    Math.toIntExact(Load.milliwatts(supply.output().ratedW())), 100);
        }
        return -Math.multiplyExact(Math.toIntExact(Load.worstMilliwatts(part)), 100 + headroomPercent);
    }

    @Override
    public int constant() {
        return -Math.multiplyExact(alwaysMilliW, 100 + headroomPercent);
    }
}
