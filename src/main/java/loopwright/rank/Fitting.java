package loopwright.rank;

import java.util.Optional;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import loopwright.fit.Layout.Stack;

/**
 * Real parts on one mount.
 *
 * @param radiator absent for a bare row of fans
 * @param fans how many of the fan
 * @param cents of radiator, fans and the fittings at the radiator
 */
record Fitting(Stack stack, Optional<Radiator> radiator, Fan fan, int fans, long cents, int leadDays) {

    static Fitting of(Stack stack, Optional<Radiator> radiator, Fan fan, LoopFittings fittings) {
        int fans = stack.shape().arrangement().fanLayers()
                * stack.shape().pattern().fans();
        long cents = fans * fan.buy().priceCents();
        int leadDays = fan.buy().leadDays();
        if (radiator.isPresent()) {
            cents += radiator.get().buy().priceCents() + fittings.partCents();
            leadDays = Math.max(leadDays, radiator.get().buy().leadDays());
        }
        return new Fitting(stack, radiator, fan, fans, cents, leadDays);
    }

    /** The same parts on a stack that takes the same parts. */
    Fitting on(Stack other) {
        return new Fitting(other, radiator, fan, fans, cents, leadDays);
    }
}
