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

    /**
     * What conducts, the coolant inside and the pressure it loses.
     *
     * @param depthMm of the fins, along the air's way
     * @param loss of the coolant through the whole radiator
     * @param fins if they are not the workshop's usual ones
     * @param tubes if they are not the workshop's usual ones
     * @param measured what a bench found
     */
    public record Core(
            @Limits(min = 5, max = 100) double depthMm,
            @Limits(min = 5, max = 30) double finsPerInch,
            @Limits(min = 1, max = 6) int tubeRows,
            @Limits(min = 10, max = 2000) double coolantML,
            List<Block.LossPoint> loss,
            Optional<Fins> fins,
            Optional<Tubes> tubes,
            Measured measured) {}

    /**
     * Louvred fins between the tubes.
     *
     * @param louvrePitchMm along the air's way
     * @param louvreLengthMm along the fin's height
     * @param heightMm from tube to tube
     * @param conductivityWPerMK of the fins' metal, and of the tubes'
     */
    public record Fins(
            @Limits(min = 0.5, max = 3) double louvrePitchMm,
            @Limits(min = 8, max = 35) double louvreAngleDeg,
            @Limits(min = 2, max = 18) double louvreLengthMm,
            @Limits(min = 3, max = 20) double heightMm,
            @Limits(min = 0.02, max = 0.2) double thicknessMm,
            @Limits(min = 10, max = 450) double conductivityWPerMK) {}

    /**
     * Flat tubes.
     *
     * @param thicknessMm outer, the short side
     * @param passes how often the coolant crosses the core: 2 when it goes and comes back
     */
    public record Tubes(
            @Limits(min = 1, max = 6) double thicknessMm,
            @Limits(min = 0.05, max = 0.4) double wallMm,
            @Limits(min = 1, max = 4) int passes) {}

    /**
     * Points from a bench.
     *
     * @param heat what the whole radiator conducts
     * @param airLoss what it resists the air, without fans
     */
    public record Measured(List<HeatPoint> heat, List<AirLossPoint> airLoss) {

        /** Nothing measured. */
        public static final Measured NOTHING = new Measured(List.of(), List.of());
    }

    /**
     * Conductance at one flow of air and one of water.
     *
     * @param airflowM3PerH through the whole radiator
     * @param flowLPerMin of water
     * @param conductanceWPerK heat over coolant mean less incoming air
     */
    public record HeatPoint(
            @Limits(min = 1, max = 3000) double airflowM3PerH,
            @Limits(min = 0.1, max = 60) double flowLPerMin,
            @Limits(min = 0.1, max = 300) double conductanceWPerK) {}

    /** Pressure the air loses at a flow through the whole radiator. */
    public record AirLossPoint(
            @Limits(min = 1, max = 3000) double airflowM3PerH,
            @Limits(min = 0.01, max = 1000) double lossPa) {}
}
