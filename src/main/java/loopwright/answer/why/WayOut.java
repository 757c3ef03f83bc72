package loopwright.answer.why;

import java.util.Comparator;
import java.util.List;
import loopwright.fit.ModSet;

/**
 * Something to give up or to change, after which all the rest can be had.
 *
 * @param changes what to give up or change
 * @param kind how far it is in the builder's hand
 * @param mods the mods with which the rest is had then
 * @param effort what they take
 * @param instead what can be had in the stead of what is given up, nearest first
 */
public record WayOut(List<Stated> changes, Kind kind, ModSet mods, Effort effort, List<Stated> instead) {

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
            .thenComparing(WayOut::hasNoFigure)
            .thenComparingLong(w -> w.effort().costCents())
            .thenComparingInt(w -> w.effort().handsOnMin())
            .thenComparingDouble(WayOut::amount)
            .thenComparing(w -> w.changes().toString());

    /** Copies. */
    public WayOut {
        changes = List.copyOf(changes);
        instead = List.copyOf(instead);
    }

    /** Whether it wants something that no figure tells, like other holes. */
    private boolean hasNoFigure() {
        return kind == Kind.OTHERWISE
                && changes.stream().anyMatch(c -> c.id().startsWith("seat:") || c.id().startsWith("place:"));
    }

    /** All that is lacking, whatever its unit. */
    private double amount() {
        return changes.stream().mapToDouble(Stated::amount).sum();
    }
}
