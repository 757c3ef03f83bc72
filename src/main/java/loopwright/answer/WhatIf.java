package loopwright.answer;

import java.util.List;
import loopwright.catalog.Catalog;
import loopwright.catalog.measure.Contradiction;
import loopwright.catalog.measure.Replacement;

/**
 * A catalogue as it is, and with what was read or assumed in place of some of its lengths.
 *
 * @param before as the files have it
 * @param after with everything applied
 * @param applied in the order in which it was applied: readings, then assumptions
 * @param contradictions readings that were not used
 * @param notes sentences about readings
 */
public record WhatIf(
        Catalog before,
        Catalog after,
        List<Replacement> applied,
        List<Contradiction> contradictions,
        List<String> notes) {

    /** Copies. */
    public WhatIf {
        applied = List.copyOf(applied);
        contradictions = List.copyOf(contradictions);
        notes = List.copyOf(notes);
    }
}
