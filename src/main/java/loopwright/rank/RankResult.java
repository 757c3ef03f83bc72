package loopwright.rank;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.fit.FitResult;

/**
 * The builds worth offering.
 *
 * @param unbeaten dearest (coolest) first
 * @param listed by the order asked
 * @param cheaper what the layouts that could be had for less than the cheapest build fail by: reason and how many
 * @param incompleteBecause why the answer may be short, where it may be
 */
public record RankResult(
        FitResult fits,
        List<Ranked> unbeaten,
        List<Ranked> listed,
        Map<String, Integer> cheaper,
        Optional<String> incompleteBecause) {

    /**
     * A build with where everything stands.
     *
     * @param equal how many builds are equal in price and temperature, itself included
     */
    public record Ranked(Build build, int equal, loopwright.fit.Witness witness) {}

    /** Copies. */
    public RankResult {
        unbeaten = List.copyOf(unbeaten);
        listed = List.copyOf(listed);
    }
}
