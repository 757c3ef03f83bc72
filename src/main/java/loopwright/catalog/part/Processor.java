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
        @Limits(min = 1, max = 1000) int performance,
        Optional<Electric> electric)
        implements Part {

    /** A processor that says nothing of its currents. */
    public Processor(
            String id,
            String title,
            Optional<String> variantOf,
            Purchase buy,
            String socket,
            Heat heat,
            int performance) {
        this(id, title, variantOf, buy, socket, heat, performance, Optional.empty());
    }

    /**
     * More of what it draws.
     *
     * @param peakW for 10 ms at most
     */
    public record Electric(double idleW, double peakW) {}

    /** Heat at work and at worst, and the processor power plugs that takes. */
    public record Heat(
            double workW,
            double worstW,
            @Limits(min = 1, max = 2) int processorPlugs) {}
}
