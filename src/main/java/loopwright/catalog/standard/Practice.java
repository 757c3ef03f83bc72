package loopwright.catalog.standard;

import loopwright.catalog.basis.Limits;
import loopwright.catalog.part.Radiator;
import loopwright.quantity.Dimension;

/** The trade's allowances; common practice, no published source. */
public record Practice(Room room, Air air, Heat heat, Core core) {

    /**
     * Room that things need.
     *
     * @param fanNeedMm gap a fan wants to anything it is not bolted to
     * @param portRoomMm free room over a radiator's port for a low elbow
     * @param fittingRadiusMm radius of a fitting
     * @param plenumPerforatedMm gap between a fan and a perforated skin above it
     * @param plenumSolidMm gap between a fan and a solid skin
     * @param coverEdgeMm how far a cover's outline may reach past the flat of its panel
     */
    public record Room(
            Dimension fanNeedMm,
            Dimension portRoomMm,
            Dimension fittingRadiusMm,
            Dimension plenumPerforatedMm,
            Dimension plenumSolidMm,
            Dimension coverEdgeMm,
            Dimension boardThicknessMm) {}

    /**
     * What air needs.
     *
     * @param outsideDepthMinMm free depth outside a panel below which a stack cannot breathe
     */
    public record Air(
            Dimension outsideDepthMinMm,
            @Limits(min = 0.3, max = 1) double solidSkinFreeAreaMin) {}

    /**
     * What the estimate of temperatures assumes.
     *
     * @param caseAirRiseK how much warmer than the room the air is that an exhaust radiator breathes
     * @param miscHeatW heat of memory, fans and small parts that stays in the case air
     */
    public record Heat(double caseAirRiseK, double miscHeatW) {}

    /** Fins and tubes of a radiator that says nothing of its own. */
    public record Core(Radiator.Fins fins, Radiator.Tubes tubes) {}
}
