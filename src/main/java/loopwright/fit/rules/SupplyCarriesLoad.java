package loopwright.fit.rules;

import java.util.List;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
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
        return -Math.multiplyExact(milliW(part), 100 + headroomPercent);
    }

    @Override
    public int constant() {
        return -Math.multiplyExact(alwaysMilliW, 100 + headroomPercent);
    }

    private static int milliW(Part part) {
        if (part instanceof Processor processor) {
            return Math.toIntExact(Load.of(processor).milliwatts());
        }
        if (part instanceof GraphicsCard card) {
            return Math.toIntExact(Load.of(card).milliwatts());
        }
        if (part instanceof Board board) {
            return Math.toIntExact(Load.of(board).milliwatts());
        }
        return part instanceof Pump pump ? Math.toIntExact(Load.of(pump).milliwatts()) : 0;
    }
}
