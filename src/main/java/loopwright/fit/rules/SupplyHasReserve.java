package loopwright.fit.rules;

import java.util.List;
import java.util.Locale;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Supply;
import loopwright.power.Load;
import loopwright.power.LoadParts;

/**
 * A supply that says what its rails bring but not what bursts it stands is rated for the worst loads and a reserve: it was built
 * before surges were asked for. Common practice, no source.
 *
 * <p>Scaled unit: milliwatts.
 *
 * @param reserveMilliW the reserve, milliwatts
 * @param alwaysMilliW drives and small parts, milliwatts
 */
public record SupplyHasReserve(int reserveMilliW, int alwaysMilliW) implements PartRule.SumRule {

    @Override
    public String id() {
        return "electric.surge-reserve";
    }

    @Override
    public String statement() {
        return String.format(
                Locale.ROOT,
                "a supply that does not say what bursts it stands is rated for the worst loads and %.0f W",
                LoadParts.watts(reserveMilliW));
    }

    @Override
    public List<Role> roles() {
        return List.of(Role.BOARD, Role.PROCESSOR, Role.CARD, Role.SUPPLY, Role.PUMP);
    }

    @Override
    public int contribution(Role role, Part part) {
        if (part instanceof Supply supply) {
            boolean asked =
                    supply.rails().filter(r -> r.surgePercent().isEmpty()).isPresent();
            return asked
                    ? Math.toIntExact(Load.milliwatts(supply.output().ratedW()))
                    : SupplyCarriesTwelveVolt.ENOUGH_MILLI_W;
        }
        return -Math.toIntExact(Load.worstMilliwatts(part));
    }

    @Override
    public int constant() {
        return -alwaysMilliW - reserveMilliW;
    }
}
