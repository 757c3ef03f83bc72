package loopwright.catalog.part;

import java.util.Optional;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.basis.Purchase;
import loopwright.quantity.Dimension;

/** A grille or filter that lies on the outside of a panel over one pattern. */
public record Grille(
        String id,
        String title,
        Optional<String> variantOf,
        Purchase buy,
        Pattern pattern,
        @Limits(min = 0.2, max = 10) Dimension thicknessMm,
        @Limits(min = 0.05, max = 1) double freeArea)
        implements Part {}
