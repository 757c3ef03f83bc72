package loopwright.answer.why;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import loopwright.fit.ModSet;

/**
 * Something to give up or to change, after which all the rest can be had.
 *
 * @param changes what to give up or change
 * @param kind how far it is in the builder's hand
 * @param mods the mods with which the rest is had then
 * @param effort what they take
 * @param warmerK how much warmer the coolant gets than it would with everything wished, K, where that can be said
 */
public record WayOut(List<Stated> changes, Kind kind, ModSet mods, Effort effort, OptionalDouble warmerK) {

    /** How far a way is in the builder's hand. */
    public enum Kind {
        /** Only wishes are given up. */
        WISHES,
        /** The brief lets something else be. */
        BRIEF,
        /** Something would have to be otherwise than it is: room, holes, rules. */
        OTHERWISE
    }

    /** Money in cents, hands-on minutes, days that are added. */
    public record Effort(long costCents, int handsOnMin, int days) {}

    /** What is in hand first, then the cheapest, the quickest, the one that lacks least. */
    static final Comparator<WayOut> CHEAPEST_FIRST = Comparator.comparing((WayOut w) -> w.kind() == Kind.OTHERWISE)
            .thenComparingLong(w -> w.effort().costCents())
            .thenComparingInt(w -> w.effort().handsOnMin())
            .thenComparingInt(WayOut::lackHmm)
            .thenComparing(w -> w.changes().toString());

    /** Copies. */
    public WayOut {
        changes = List.copyOf(changes);
    }

    /** All that is lacking, hundredths of a millimetre. */
    public int lackHmm() {
        return changes.stream().mapToInt(c -> c.lackHmm().orElse(0)).sum();
    }
}
