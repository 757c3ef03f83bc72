package loopwright.loop.study;

import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.Nudge;
import loopwright.loop.Steady;
import loopwright.quantity.Units;

/**
 * A machine whose pump lifts so much more that the coolant flows faster, with the same heat and the same air.
 *
 * <p><b>Units.</b> L/min, K. <b>Accuracy.</b> The flow is met to 1e-9 of the head's factor.
 */
final class MoreCoolant {

    /** Most that the pump's head is multiplied by, dimensionless: beyond, no pump is meant any more. */
    private static final double FACTOR_MAX = 64;

    /** Halvings of the factor's range: down to 1e-9 of it. */
    private static final int HALVINGS = 36;

    private final MachineModel model;
    private final Machine machine;
    private final Steady before;

    MoreCoolant(MachineModel model, Machine machine, Steady before) {
        this.model = model;
        this.machine = machine;
        this.before = before;
    }

    /** Coolant over room with so much more flow, K; empty when no head within reason gives it. */
    OptionalDouble overRoomK(double moreLPerMin) {
        double wantedM3PerS = before.water().flowM3PerS() + Units.m3PerSOfLPerMin(moreLPerMin);
        double low = 1;
        double high = 2;
        while (flowM3PerS(high) < wantedM3PerS) {
            low = high;
            high *= 2;
            if (high > FACTOR_MAX) {
                return OptionalDouble.empty();
            }
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (flowM3PerS(middle) < wantedM3PerS) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return solve(high).map(s -> OptionalDouble.of(s.coolantOverRoomK())).orElse(OptionalDouble.empty());
    }

    private double flowM3PerS(double headFactor) {
        return solve(headFactor).map(s -> s.water().flowM3PerS()).orElse(0.0);
    }

    private Optional<Steady> solve(double headFactor) {
        Machine more = Changed.pump(machine, Changed.headTimes(machine.water().pump(), headFactor));
        return model.solve(more, before.air(), Nudge.NONE).found();
    }
}
