package loopwright.catalog.standard;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.part.Board.BoardForm;
import loopwright.catalog.part.Drive.DriveForm;
import loopwright.catalog.part.ScrewThread;
import loopwright.catalog.part.Supply.SupplyForm;
import loopwright.quantity.Dimension;

/** Published outlines, patterns and threads; each row names its source in the file. */
public record Standards(
        List<BoardOutline> boards,
        List<SupplyFace> supplies,
        List<DriveBody> drives,
        List<FanPattern> fans,
        List<ThreadRow> threads,
        Optional<StandardElectric> electric,
        List<Expansion> expansions) {

    /** Standards that say nothing of electrics and of what warmth does. */
    public Standards(
            List<BoardOutline> boards,
            List<SupplyFace> supplies,
            List<DriveBody> drives,
            List<FanPattern> fans,
            List<ThreadRow> threads) {
        this(boards, supplies, drives, fans, threads, Optional.empty(), List.of());
    }

    /** How much longer a material gets: micrometres a metre and kelvin. */
    public record Expansion(
            Panel.Material material,
            @Limits(min = 0, max = 300) double expansionUmPerMK,
            String source) {}

    /** A board form: outline and mounting holes from its top-rear corner. */
    public record BoardOutline(
            BoardForm form, Dimension lengthMm, Dimension widthMm, List<Hole> holes, String source) {}

    /** A mounting hole: distance down the board and away from the rear edge. */
    public record Hole(String id, Dimension lengthMm, Dimension widthMm) {}

    /** A supply form: its face and its published length. */
    public record SupplyFace(
            SupplyForm form, Dimension lengthMm, Dimension widthMm, Dimension heightMm, String source) {}

    /** A drive form: its body. */
    public record DriveBody(
            DriveForm form, Dimension lengthMm, Dimension widthMm, Dimension heightMaxMm, String source) {}

    /** A fan size: distance between its holes, and the ring its blades sweep. */
    public record FanPattern(int sizeMm, Dimension holePitchMm, Dimension ringMm, String source) {}

    /** A thread: pitch, outside diameter, clearance holes and tap drill. */
    public record ThreadRow(
            ScrewThread thread,
            @Limits(min = 0.2, max = 3) double pitchMm,
            @Limits(min = 1, max = 20) double outsideMm,
            @Limits(min = 1, max = 20) double clearanceFineMm,
            @Limits(min = 1, max = 20) double clearanceMediumMm,
            @Limits(min = 1, max = 20) double clearanceCoarseMm,
            @Limits(min = 1, max = 20) double tapDrillMm,
            String source) {}
}
