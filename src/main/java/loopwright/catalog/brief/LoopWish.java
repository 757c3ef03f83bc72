package loopwright.catalog.brief;

import java.util.Optional;
import loopwright.catalog.basis.Limits;

/** What the loop is made of. Roles left out may be any of the catalogue. */
public record LoopWish(
        Optional<Choice> radiators,
        Optional<Choice> fans,
        Optional<Choice> pumps,
        Optional<Choice> reservoirs,
        Choice tube,
        @Limits(min = 0.2, max = 20) double tubeM,
        Choice coolant,
        @Limits(min = 0.1, max = 20) double coolantL) {}
