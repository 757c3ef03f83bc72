package loopwright.fit;

import java.util.List;

/**
 * A layout that fits, with every mod set it needs.
 *
 * @param needed each is enough, and none of its valid parts is; the gentlest first: fewest mods, then cuts that show, cuts, minutes
 */
public record FoundLayout(Layout layout, List<ModSet> needed) {

    /** Copies. */
    public FoundLayout {
        needed = List.copyOf(needed);
    }
}
