package loopwright.loop;

import java.util.List;
import loopwright.loop.exchange.RadiatorCore;
import loopwright.loop.water.Passage;

/** One thing that the coolant passes, in the order of the loop. */
public sealed interface Station {

    /** What a person calls it. */
    String name();

    /** What it resists. */
    Passage passage();

    /** Tube, fittings, reservoir: coolant passes and keeps its temperature. */
    record Way(String name, Passage passage) implements Station {}

    /** A source of heat, above 0 W or 0: a block, the pump. */
    record Source(String name, Passage passage, double heatW) implements Station {}

    /**
     * Sources side by side: the coolant divides and joins again.
     *
     * @param passage of all of them together
     */
    record Beside(String name, loopwright.loop.water.Parallel passage, List<Source> sources) implements Station {
        /** Copies. */
        public Beside {
            sources = List.copyOf(sources);
        }
    }

    /**
     * A radiator.
     *
     * @param branch the number of the air branch it stands in
     * @param airSideWPerK fins to air, at the air that passes
     */
    record Cooler(String name, Passage passage, RadiatorCore core, int branch, double airSideWPerK)
            implements Station {}
}
