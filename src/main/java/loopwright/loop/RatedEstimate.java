package loopwright.loop;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The first cooling model, an estimate: every radiator at its rated conductance, all heat through one coolant.
 *
 * <p><b>Units.</b> W, W/K, K.
 *
 * <p><b>Valid for</b> steady state with coolant flow high enough that its temperature is nearly the same all round the loop
 * (2 L/min and more); the inlet temperatures are given, not worked out. It balances heat: ΣG·(T − inlet) = P, hence
 * T = (P + ΣG·inlet)/ΣG.
 *
 * <p><b>Accuracy.</b> Conductance scatters by 15 % ([ChangWang1997], ±15 % for 89 % of the points: read here as a standard
 * deviation, which is cautious), heat by 5 %; both act on the coolant's rise over the mean inlet air, P/ΣG, and are added in
 * squares. What the inlet air itself is off by is not in the band. In a gain, both scatters are common to the two cases
 * and act once, on the difference of their rises; each case has 5 % of its own rise besides.
 *
 * <p><b>Source.</b> Heat balance; trade practice for the conductances that go in.
 */
public final class RatedEstimate implements CoolingModel {

    /** Relative standard scatter of the conductance, dimensionless; [ChangWang1997], see above. */
    private static final double CONDUCTANCE_SCATTER = 0.15;

    /** Relative standard scatter of the heat. ASSUMED: see physics/assumptions.md. */
    private static final double HEAT_SCATTER = 0.05;

    /** Relative scatter that one case does not share with another. ASSUMED: see physics/assumptions.md. */
    private static final double OWN_SCATTER = 0.05;

    @Override
    public String title() {
        return "rated estimate";
    }

    @Override
    public OptionalDouble coolantOverRoomK(CoolingCase asked) {
        double conductanceWPerK = asked.conductanceWPerK();
        return conductanceWPerK > 0
                ? OptionalDouble.of((asked.heatW() + asked.inletW()) / conductanceWPerK)
                : OptionalDouble.empty();
    }

    @Override
    public Optional<Band> coolantOverRoomBand(CoolingCase asked) {
        OptionalDouble valueK = coolantOverRoomK(asked);
        if (valueK.isEmpty()) {
            return Optional.empty();
        }
        double plusMinusK = rootSumSquare(CONDUCTANCE_SCATTER, HEAT_SCATTER) * riseK(asked);
        return Optional.of(Band.around(valueK.getAsDouble(), plusMinusK));
    }

    @Override
    public Optional<Band> gainBand(CoolingCase before, CoolingCase after) {
        OptionalDouble beforeK = coolantOverRoomK(before);
        OptionalDouble afterK = coolantOverRoomK(after);
        if (beforeK.isEmpty() || afterK.isEmpty()) {
            return Optional.empty();
        }
        if (before.equals(after)) {
            return Optional.of(new Band(0, 0)); // a case does not differ from itself
        }
        double gainK = beforeK.getAsDouble() - afterK.getAsDouble();
        double riseBeforeK = riseK(before);
        double riseAfterK = riseK(after);
        double commonK = rootSumSquare(CONDUCTANCE_SCATTER, HEAT_SCATTER) * (riseBeforeK - riseAfterK);
        double ownK = rootSumSquare(OWN_SCATTER * riseBeforeK, OWN_SCATTER * riseAfterK);
        return Optional.of(Band.around(gainK, rootSumSquare(commonK, ownK)));
    }

    /** The coolant's rise over the mean inlet air: the part that scatters. */
    private static double riseK(CoolingCase asked) {
        return asked.heatW() / asked.conductanceWPerK();
    }

    private static double rootSumSquare(double one, double other) {
        return Math.sqrt(one * one + other * other);
    }
}
