package loopwright.catalog.part;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.basis.PartPort;
import loopwright.catalog.basis.Purchase;
import loopwright.quantity.Dimension;

/**
 * A graphics card, bare (its own air cooler) or with a block.
 *
 * <p>Length runs forward from the slot plane, thickness away from the slot's first position, height over the board.
 */
public record GraphicsCard(
        String id,
        String title,
        Optional<String> variantOf,
        Purchase buy,
        Cooling cooling,
        Body body,
        Power power,
        @Limits(min = 1, max = 1000) int performance,
        Optional<Electric> electric,
        List<PartPort> ports,
        Optional<Integer> massG)
        implements Part {

    /** A card that says nothing of its currents, ports and mass. */
    public GraphicsCard(
            String id,
            String title,
            Optional<String> variantOf,
            Purchase buy,
            Cooling cooling,
            Body body,
            Power power,
            int performance) {
        this(
                id,
                title,
                variantOf,
                buy,
                cooling,
                body,
                power,
                performance,
                Optional.empty(),
                List.of(),
                Optional.empty());
    }

    /**
     * More of what it draws.
     *
     * @param burstPercent of its worst draw, for less than a millisecond
     * @param sixteenPinW what its 16-pin plug must be coded for at least, where it has one
     */
    public record Electric(
            double idleW,
            @Limits(min = 0, max = 4) int sixPinPlugs,
            @Limits(min = 100, max = 400) Optional<Integer> burstPercent,
            @Limits(min = 150, max = 600) Optional<Integer> sixteenPinW) {}

    /** Who takes its heat. */
    public enum Cooling {
        /** Its own fans: the heat stays in the case air. */
        AIR,
        /** A block: the heat goes into the coolant. */
        BLOCK
    }

    /**
     * Body over everything, and the room its plug or its block's fittings need above its top edge.
     *
     * @param topRoomLengthMm how much of its length, from its far end, that room takes
     */
    public record Body(
            Dimension lengthMm,
            Dimension thicknessMm,
            Dimension heightMm,
            Dimension topRoomMm,
            Dimension topRoomLengthMm) {}

    /** Heat at work and at worst, power plugs, and the block's figures where it has one. */
    public record Power(
            double workW,
            double worstW,
            @Limits(min = 0, max = 4) int eightPinPlugs,
            @Limits(min = 0, max = 1) int sixteenPinPlugs,
            Optional<Block.Flow> block) {}
}
