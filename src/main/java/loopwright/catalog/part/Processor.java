package loopwright.catalog.part;

import java.util.Optional;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.basis.Purchase;

/** A processor: its socket, its heat at work and at worst, the plugs it wants, and how fast it is (our own scale). */
public record Processor(
        String id,
        String title,
        Optional<String> variantOf,
        Purchase buy,
        String socket,
        Heat heat,
        @Limits(min = 1, max = 1000) int performance)
        implements Part {

    /** Heat at work and at worst, and the processor power plugs that takes. */
    public record Heat(
            double workW,
            double worstW,
            @Limits(min = 1, max = 2) int processorPlugs) {}
}
