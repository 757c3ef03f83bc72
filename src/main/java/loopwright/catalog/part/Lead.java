package loopwright.catalog.part;

import java.util.Optional;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.basis.Purchase;

/**
 * A lead between a plug and what it feeds: an extension, a splitter, a powered hub, an adaptor.
 *
 * @param from the plug it is fed by; a hub's speed signal comes from a fan header besides
 * @param to the plugs it offers
 * @param outlets how many of them
 * @param limitA on 12 V, for all outlets together; left out: what feeds it
 */
public record Lead(
        String id,
        String title,
        Optional<String> variantOf,
        Purchase buy,
        Kind kind,
        Plug from,
        Plug to,
        @Limits(min = 1, max = 16) int outlets,
        @Limits(min = 20, max = 2000) double lengthMm,
        @Limits(min = 0.1, max = 60) Optional<Double> limitA,
        Optional<Integer> massG)
        implements Part {

    /** What it is for. */
    public enum Kind {
        /** Makes a cable longer. */
        EXTENSION,
        /** Divides a header; it takes its current from there. */
        SPLITTER,
        /** Fed by the supply, told its speed by a header. */
        HUB,
        /** Turns one plug into another. */
        ADAPTOR
    }
}
