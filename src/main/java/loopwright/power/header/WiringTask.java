package loopwright.power.header;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.part.Lead;

/**
 * Fans and a pump to be fed, and what there is for it.
 *
 * @param there headers and plugs
 * @param leads the catalogue's; any number of each can be bought
 */
public record WiringTask(
        List<FanGroup> fans, Optional<PumpFeed> pump, There there, List<Lead> leads, WiringLimits limits) {

    /** Copies. */
    public WiringTask {
        fans = List.copyOf(fans);
        leads = List.copyOf(leads);
    }

    /**
     * Headers of the board and free plugs of the supply.
     *
     * @param sata SATA plugs that no drive takes
     * @param peripheral older 4-pin drive plugs
     */
    public record There(List<HeaderAt> headers, int sata, int peripheral) {
        /** Copies. */
        public There {
            headers = List.copyOf(headers);
        }
    }

    /** The same with other things there. */
    WiringTask with(There other) {
        return new WiringTask(fans, pump, other, leads, limits);
    }
}
