package loopwright.catalog.part;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.basis.Purchase;
import loopwright.quantity.Dimension;

/**
 * A radiator: its hole pattern, both overhangs (never a length alone), ports, core and screw seats.
 *
 * <p>Its length is the fan area (fans × size) plus the two overhangs.
 */
public record Radiator(
        String id,
        String title,
        Optional<String> variantOf,
        Purchase buy,
        Pattern pattern,
        Body body,
        Ports ports,
        Core core)
        implements Part {

    /**
     * Outside dimensions.
     *
     * @param widthMm across the fans, centred on the screws
     * @param thicknessMm over the screw flanges
     * @param portOverhangMm from the fan area to the outside of the end with the ports
     * @param blankOverhangMm from the fan area to the outside of the other end
     */
    public record Body(
            Dimension widthMm,
            @Limits(min = 10, max = 120) Dimension thicknessMm,
            @Limits(min = 0, max = 80) Dimension portOverhangMm,
            @Limits(min = 0, max = 80) Dimension blankOverhangMm,
            Seat seat,
            int massG) {}

    /** The screw seat: thread, flange thickness, and free depth behind the flange to the first tube. */
    public record Seat(
            ScrewThread thread, @Limits(min = 0.5, max = 5) Dimension flangeMm, Dimension depthToTubeMm) {}

    /** Ports, all on one end tank. */
    public record Ports(List<Port> at, Metal metal) {}

    /**
     * One threaded port.
     *
     * @param face {@code broad}: on the large face, looking away from the panel; {@code end}: out of the tank's end
     * @param fromFanAreaMm centre, from the fan area's edge outwards
     * @param asideMm centre, from the middle of the width; one side negative
     */
    public record Port(
            PortFace face,
            @Limits(min = 0, max = 80) Dimension fromFanAreaMm,
            @Limits(min = -120, max = 120) Dimension asideMm) {}

    /** Which face of the tank a port is on. */
    public enum PortFace {
        /** The large face. */
        BROAD,
        /** The far end. */
        END
    }

    /** What the wetted parts are made of; aluminium must not share a loop with copper. */
    public enum Metal {
        /** Copper or brass. */
        COPPER,
        /** Aluminium. */
        ALUMINIUM
    }

    /** What conducts: fin depth, fin density and tube rows, and the coolant inside. */
    public record Core(
            @Limits(min = 5, max = 100) double depthMm,
            @Limits(min = 5, max = 30) double finsPerInch,
            @Limits(min = 1, max = 6) int tubeRows,
            @Limits(min = 10, max = 2000) double coolantML) {}
}
