package loopwright.catalog.brief;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Limits;

/**
 * Which parts may fill a role: any of a list, or all of the kind with a floor under their performance.
 *
 * @param anyOf ids; empty means the whole catalogue
 */
public record Choice(
        List<String> anyOf, @Limits(min = 1, max = 1000) Optional<Integer> performanceMin) {

    /** Anything. */
    public static final Choice ANY = new Choice(List.of(), Optional.empty());
}
