package loopwright.catalog.part;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.basis.Span;
import loopwright.quantity.Dimension;

/**
 * A main board in its own frame: length from the edge above the processor downwards, width from the rear (connector)
 * edge forwards, height over the board's top face. Its outline is that of its form in {@code shared/standards.yaml}.
 */
public record Board(
        String id,
        String title,
        Optional<String> variantOf,
        Purchase buy,
        BoardForm form,
        Sockets sockets,
        List<Zone> zones,
        Electric electric,
        List<Header> headers,
        Optional<Integer> massG)
        implements Part {

    /** A board that says nothing of its headers' limits and its mass. */
    public Board(
            String id,
            String title,
            Optional<String> variantOf,
            Purchase buy,
            BoardForm form,
            Sockets sockets,
            List<Zone> zones,
            Electric electric) {
        this(id, title, variantOf, buy, form, sockets, zones, electric, List.of(), Optional.empty());
    }

    /** Forms with a published outline. */
    public enum BoardForm {
        /** 170 × 170 mm. */
        MINI_ITX,
        /** 244 × 244 mm. */
        MICRO_ATX,
        /** 305 × 244 mm. */
        ATX
    }

    /** Where the processor, the memory and the card sit. */
    public record Sockets(
            String processorSocket,
            Dimension processorLengthMm,
            Dimension processorWidthMm,
            MemoryBank memory,
            Dimension slotLengthMm) {}

    /** The memory sockets: the area they cover, their generation and how many there are. */
    public record MemoryBank(Span lengthMm, Span widthMm, String generation, int sockets) {}

    /**
     * Something that stands on the board.
     *
     * @param room {@code false}: a solid body; {@code true}: room kept free (a plug's bend, a hand)
     * @param plug the plug that is seated here, if it is one
     */
    public record Zone(String id, Span lengthMm, Span widthMm, Span heightMm, boolean room, Optional<Plug> plug) {
        /** A zone without a plug. */
        public Zone(String id, Span lengthMm, Span widthMm, Span heightMm, boolean room) {
            this(id, lengthMm, widthMm, heightMm, room, Optional.empty());
        }
    }

    /** A header that feeds fans or a pump. */
    public record Header(
            String id, Use use, @Limits(min = 0.1, max = 5) double limitA) {
        /** What it is made for. */
        public enum Use {
            /** Fans. */
            FAN,
            /** A pump. */
            PUMP
        }
    }

    /** Heat of the board itself, and its processor power plugs, drive ports and fan headers. */
    public record Electric(double heatW, int processorPlugs, int sataPorts, int m2Sockets, int fanHeaders) {}
}
