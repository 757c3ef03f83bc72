package loopwright.catalog.standard;

import java.util.List;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.part.ScrewThread;
import loopwright.quantity.Dimension;

/**
 * What is allowed for when screws are chosen; common practice, no published source, but the engagement, which is the usual
 * rule of machine design.
 *
 * @param washers one a thread
 * @param engagement how deep a screw has to go into a material
 * @param tubeSafetyMm what a screw's end keeps from the first tube of a radiator
 * @param fixed screws that the trade uses in one length
 * @param drivers with what screws are driven; left out, no screw is looked at for a driver's way
 */
public record Fastening(
        List<Washer> washers,
        List<Engagement> engagement,
        Dimension tubeSafetyMm,
        FanFrame fan,
        RivetNut rivetNut,
        List<FixedScrews> fixed,
        List<Driver> drivers) {

    /** Nothing is said: no screw can be chosen. */
    public static final Fastening NOTHING = new Fastening(
            List.of(),
            List.of(),
            Dimension.UNKNOWN,
            new FanFrame(ScrewThread.FAN, Dimension.UNKNOWN, Dimension.UNKNOWN, Dimension.UNKNOWN),
            new RivetNut(Dimension.UNKNOWN, Dimension.UNKNOWN),
            List.of(),
            List.of());

    /** Copies. */
    public Fastening {
        washers = List.copyOf(washers);
        engagement = List.copyOf(engagement);
        fixed = List.copyOf(fixed);
        drivers = List.copyOf(drivers);
    }

    /** A washer that lies under a head. */
    public record Washer(
            ScrewThread thread, @Limits(min = 0.2, max = 4) Dimension thicknessMm) {}

    /** How deep a screw has to go into a material, in outside diameters of its thread. */
    public record Engagement(
            SeatMaterial material,
            @Limits(min = 0.5, max = 4) double diameters) {}

    /** What a thread is in. */
    public enum SeatMaterial {
        /** Steel, and the folded rails of copper and brass radiators. */
        STEEL,
        /** Aluminium. */
        ALUMINIUM,
        /** Plastic, cut by the screw itself. */
        PLASTIC
    }

    /**
     * The corner of a fan's frame.
     *
     * @param thread of the screw that cuts its own way into it
     * @param flangeMm what the screw goes into
     * @param behindFlangeMm free behind it before the blades are near
     * @param holeMm bore
     */
    public record FanFrame(
            ScrewThread thread,
            @Limits(min = 1, max = 30) Dimension flangeMm,
            @Limits(min = 0, max = 30) Dimension behindFlangeMm,
            @Limits(min = 2, max = 8) Dimension holeMm) {}

    /** A nut set into sheet: how much of it has thread, and how far a screw may come out behind. */
    public record RivetNut(
            @Limits(min = 2, max = 20) Dimension threadMm,
            @Limits(min = 0, max = 30) Dimension behindMm) {}

    /**
     * Screws that the trade uses in one length.
     *
     * @param count of them; 0: one for each hole of what they hold
     */
    public record FixedScrews(
            Holds holds,
            ScrewThread thread,
            @Limits(min = 3, max = 80) Dimension lengthMm,
            @Limits(min = 0, max = 24) int count) {}

    /**
     * A straight screwdriver and the hand that holds it.
     *
     * @param shaftMm from the screw's head to the hand
     * @param shaftAcrossMm room across the shaft, and the screw's head
     * @param handMm handle and hand, along the screw's axis
     * @param handAcrossMm the same, across it
     */
    public record Driver(
            String id,
            String title,
            @Limits(min = 5, max = 500) Dimension shaftMm,
            @Limits(min = 3, max = 30) Dimension shaftAcrossMm,
            @Limits(min = 20, max = 300) Dimension handMm,
            @Limits(min = 15, max = 150) Dimension handAcrossMm) {}

    /** What such screws hold. */
    public enum Holds {
        /** The board on its standoffs. */
        BOARD,
        /** The supply at its face. */
        SUPPLY,
        /** A 2.5-inch drive. */
        DRIVE_SMALL,
        /** A 3.5-inch drive. */
        DRIVE_LARGE,
        /** A card at its bracket. */
        CARD,
        /** One foot. */
        FOOT
    }
}
