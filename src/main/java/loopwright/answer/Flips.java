package loopwright.answer;

import java.util.List;
import java.util.Optional;
import loopwright.fit.ClashFinder.Clash;
import loopwright.fit.Gap;
import loopwright.fit.Layout;
import loopwright.fit.ModSet;

/**
 * What other lengths change about which layouts fit one chassis.
 *
 * <p>A layout before and one after are the same when the same radiators and fans hang on the same mounts in the same
 * arrangements with their ports at the same ends, even if their dimensions, and so their keys, are not the same. Where
 * parts that were alike no longer are, each of them counts.
 *
 * @param died layouts that fitted and no longer do
 * @param alive layouts that fit now and did not
 * @param verdicts layouts that fit before and after with another verdict on their tightest place
 * @param otherMods layouts that fit before and after with the same verdict, but by other mods
 * @param doubts layouts that were or are unknown, and are not what they were
 * @param same how many fit before and after with the same verdict and the same mods
 * @param incompleteBecause why these lists may be short, where they may be
 */
public record Flips(
        List<Died> died,
        List<Alive> alive,
        List<Changed> verdicts,
        List<Changed> otherMods,
        List<Doubt> doubts,
        int same,
        Optional<String> incompleteBecause) {

    /** Nothing was changed. */
    static final Flips NONE = new Flips(List.of(), List.of(), List.of(), List.of(), List.of(), 0, Optional.empty());

    /** Copies. */
    public Flips {
        died = List.copyOf(died);
        alive = List.copyOf(alive);
        verdicts = List.copyOf(verdicts);
        otherMods = List.copyOf(otherMods);
        doubts = List.copyOf(doubts);
    }

    /** Whether nothing flips. */
    public boolean isNothing() {
        return died.isEmpty() && alive.isEmpty() && verdicts.isEmpty() && otherMods.isEmpty() && doubts.isEmpty();
    }

    /**
     * A layout that fitted and no longer does.
     *
     * @param layout as it was
     * @param only those radiators that it is about, where not all that were alike share its fate; else empty
     * @param mods the gentlest set it needed
     * @param clash what is in the way now, with that set
     */
    public record Died(Layout layout, List<Hung> only, ModSet mods, Clash clash) {}

    /**
     * A layout that fits now and did not.
     *
     * @param layout as it is now
     * @param mods the gentlest set it needs
     * @param tightest with that set
     */
    public record Alive(Layout layout, List<Hung> only, ModSet mods, Gap tightest) {}

    /** Radiators on a mount. */
    public record Hung(String mount, List<String> radiators) {}

    /** A layout, the gentlest set it needs, and its tightest place with that. */
    public record Stand(Layout layout, ModSet mods, Gap tightest) {}

    /** A layout that fits before and after, but not in the same way. */
    public record Changed(Stand was, Stand is, List<Hung> only) {

        /** Whether other mods are the gentlest now. */
        public boolean needsOtherMods() {
            return !was.mods().equals(is.mods());
        }
    }

    /** Whether a layout fits. */
    public enum State {
        /** It fits. */
        FITS,
        /** It would fit if what is unknown were nothing. */
        UNKNOWN,
        /** It does not fit. */
        NOT
    }

    /**
     * A layout that becomes unknown or no longer is.
     *
     * @param layout as it is now, or as it was where it is gone
     * @param measure what has to be measured while it is unknown
     */
    public record Doubt(Layout layout, List<Hung> only, State was, State is, List<String> measure) {}
}
