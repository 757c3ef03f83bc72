package loopwright.catalog.part;

import java.util.Optional;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.basis.Purchase;
import loopwright.quantity.Dimension;

/** A memory kit: its height over the board, its generation, how many modules and gigabytes in all. */
public record Memory(
        String id,
        String title,
        Optional<String> variantOf,
        Purchase buy,
        String generation,
        @Limits(min = 20, max = 80) Dimension heightMm,
        @Limits(min = 1, max = 8) int modules,
        @Limits(min = 1, max = 4096) int capacityGb,
        Optional<Integer> massG)
        implements Part {

    /** A kit that says nothing of its mass. */
    public Memory(
            String id,
            String title,
            Optional<String> variantOf,
            Purchase buy,
            String generation,
            Dimension heightMm,
            int modules,
            int capacityGb) {
        this(id, title, variantOf, buy, generation, heightMm, modules, capacityGb, Optional.empty());
    }
}
