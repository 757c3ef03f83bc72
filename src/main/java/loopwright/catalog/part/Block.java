package loopwright.catalog.part;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.basis.PartPort;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.basis.SizeMm;
import loopwright.quantity.Dimension;

/**
 * A block that takes a processor's heat: footprint (length along the board's top edge, width away from the rear) and
 * height over the board, and the room its fittings need above it.
 */
public record Block(
        String id,
        String title,
        Optional<String> variantOf,
        Purchase buy,
        List<String> sockets,
        SizeMm body,
        Dimension portRoomMm,
        Flow flow,
        List<PartPort> ports,
        Optional<Integer> massG)
        implements Part {

    /** A block that says nothing of its ports and mass. */
    public Block(
            String id,
            String title,
            Optional<String> variantOf,
            Purchase buy,
            List<String> sockets,
            SizeMm body,
            Dimension portRoomMm,
            Flow flow) {
        this(id, title, variantOf, buy, sockets, body, portRoomMm, flow, List.of(), Optional.empty());
    }

    /**
     * Resistance to flow and to heat, and what it is made of.
     *
     * @param channelMm the narrowest channel that coolant goes through
     */
    public record Flow(
            List<LossPoint> loss,
            @Limits(min = 0.005, max = 1) double resistanceKPerW,
            Radiator.Metal metal,
            @Limits(min = 1, max = 500) double coolantML,
            @Limits(min = 0.05, max = 10) Optional<Double> channelMm) {

        /** A block that does not say how wide its channels are. */
        public Flow(List<LossPoint> loss, double resistanceKPerW, Radiator.Metal metal, double coolantML) {
            this(loss, resistanceKPerW, metal, coolantML, Optional.empty());
        }
    }

    /** Pressure lost at a flow. */
    public record LossPoint(double flowLPerMin, double lossKPa) {}
}
