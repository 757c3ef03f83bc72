package loopwright.fit;

import java.util.List;
import java.util.OptionalDouble;
import loopwright.fit.rules.Chosen;
import loopwright.quantity.IntervalSet;
import loopwright.tolerance.PairMargin;

/**
 * One way to have a layout with a mod set: where everything stands, and how near it comes.
 *
 * @param parts parts that take no more room than any other choice; their dimensions are what was checked
 * @param places which part is in which place of the chassis, in the order supply, drives, pump, reservoir
 * @param stacks where each stack hangs
 * @param gaps every gap, smallest margin first
 */
public record Witness(ModSet mods, Chosen parts, List<InPlace> places, List<At> stacks, List<Gap> gaps) {

    /** A part in a place. */
    public record InPlace(String what, String partId, String place) {}

    /**
     * Where a stack hangs: the pattern's centre, in chassis coordinates, and all the positions it may take while the
     * others can still stand somewhere.
     */
    public record At(Layout.Stack stack, int alongHmm, int asideHmm, IntervalSet alongSlide, IntervalSet asideSlide) {}

    /** Copies. */
    public Witness {
        places = List.copyOf(places);
        stacks = List.copyOf(stacks);
        gaps = List.copyOf(gaps);
    }

    /** The place where it is tightest. */
    public Gap tightest() {
        return gaps.get(0);
    }

    /** The chance that everything fits as it stands here; worked out when asked. */
    public OptionalDouble probability() {
        return PairMargin.probabilityOfAll(gaps.stream().map(Gap::margin).toList());
    }

    /** The place that is likeliest to clash: the least chance; ties go to the smaller margin, then to the name. */
    public Gap likeliestClash() {
        Gap least = gaps.get(0);
        double chance = least.probability().orElse(0);
        for (Gap gap : gaps) {
            double its = gap.probability().orElse(0);
            boolean sameMargin = gap.marginHmm() == least.marginHmm();
            boolean earlier = (gap.one() + gap.other()).compareTo(least.one() + least.other()) < 0;
            if (its < chance || (its <= chance && sameMargin && earlier)) {
                least = gap;
                chance = its;
            }
        }
        return least;
    }
}
