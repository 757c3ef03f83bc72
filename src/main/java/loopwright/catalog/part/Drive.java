package loopwright.catalog.part;

import java.util.Optional;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.basis.SizeMm;
import loopwright.quantity.Dimension;

/** A drive; its plugs need room beyond the far end of its length. Drives in a board socket take no place. */
public record Drive(
        String id,
        String title,
        Optional<String> variantOf,
        Purchase buy,
        DriveForm form,
        SizeMm body,
        Dimension plugRoomMm,
        double heatW,
        Optional<Electric> electric,
        Optional<Screwing> screws,
        Optional<Integer> massG)
        implements Part {

    /** A drive that says nothing of its currents, screws and mass. */
    public Drive(
            String id,
            String title,
            Optional<String> variantOf,
            Purchase buy,
            DriveForm form,
            SizeMm body,
            Dimension plugRoomMm,
            double heatW) {
        this(
                id,
                title,
                variantOf,
                buy,
                form,
                body,
                plugRoomMm,
                heatW,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /**
     * What it draws.
     *
     * @param startW while a disk spins up
     * @param lowW of its draw at work, what comes from 5 V and 3.3 V
     */
    public record Electric(double idleW, double startW, double lowW) {}

    /**
     * How it is screwed.
     *
     * @param depthMm how deep a screw may go into it
     * @param spins whether it has a disk, which hums and does not like to be shaken
     */
    public record Screwing(
            ScrewThread thread, @Limits(min = 1, max = 10) Dimension depthMm, boolean spins) {}

    /** Forms with a published body. */
    public enum DriveForm {
        /** 69.85 × 100.2 mm. */
        D2_5,
        /** 101.6 × 147 mm. */
        D3_5,
        /** On the board. */
        M2
    }
}
