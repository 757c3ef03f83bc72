package loopwright.fit;

import java.util.List;
import java.util.Optional;

/**
 * Every layout that fits.
 *
 * @param fits in the order of their texts
 * @param unknown layouts that nobody can answer for until something is measured
 * @param incompleteBecause why the list may be short, where it may be
 * @param modSets how many valid mod sets were looked at
 */
public record FitResult(
        List<FoundLayout> fits, List<UnknownLayout> unknown, Optional<String> incompleteBecause, int modSets) {

    /** Copies. */
    public FitResult {
        fits = List.copyOf(fits);
        unknown = List.copyOf(unknown);
    }

    /** Whether nothing can be missing. */
    public boolean isComplete() {
        return incompleteBecause.isEmpty();
    }
}
