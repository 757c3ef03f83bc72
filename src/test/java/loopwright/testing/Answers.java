package loopwright.testing;

import static loopwright.testing.Mm.hmm;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;
import loopwright.fit.Arrangement;
import loopwright.fit.FitSearch;
import loopwright.fit.FitWish;
import loopwright.fit.FoundLayout;
import loopwright.fit.Gap;
import loopwright.fit.Layout;
import loopwright.fit.ModSet;
import loopwright.fit.Shape;
import loopwright.fit.Witness;
import loopwright.fit.WitnessFinder;

/** Reads answers about a small case: all of them through the production search. */
public final class Answers {

    private final SmallCase question;
    private final FitSearch search;
    private final List<FoundLayout> fits;

    /** Answers a case. */
    public Answers(SmallCase question) {
        this.question = question;
        this.search = question.search(FitWish.ALL);
        this.fits = search.run().fits();
    }

    /** What hangs where. */
    public record Wish(String pattern, double thicknessMm, Arrangement arrangement) {
        boolean isMetBy(Shape shape) {
            return shape.pattern().toString().equals(pattern)
                    && shape.thicknessHmm() == hmm(thicknessMm)
                    && shape.arrangement() == arrangement;
        }
    }

    /** Every layout that fits. */
    public List<FoundLayout> all() {
        return fits;
    }

    /** The layouts of one stack that is as wished. */
    public List<FoundLayout> of(Wish wish) {
        return matching(s -> wish.isMetBy(s));
    }

    /** The layouts of one stack with such a shape. */
    public List<FoundLayout> matching(Predicate<Shape> shape) {
        return fits.stream()
                .filter(f -> f.layout().stacks().size() == 1)
                .filter(f -> shape.test(f.layout().stacks().get(0).shape()))
                .toList();
    }

    /** The needed sets of layouts, as sorted ids. */
    public SortedSet<String> needed(List<FoundLayout> layouts) {
        SortedSet<String> out = new TreeSet<>();
        for (FoundLayout found : layouts) {
            found.needed().forEach(set -> out.add(ids(set)));
        }
        return out;
    }

    /** A set as text: {@code [a, b]}. */
    public String ids(ModSet set) {
        return set.ids(question.fitCase().chassis()).toString();
    }

    /** The best way to have the first layout as wished, with its first needed set. */
    public Witness witness(Wish wish) {
        FoundLayout found = of(wish).get(0);
        return witness(found.layout(), found.needed().get(0));
    }

    /** The best way to have a layout with a set. */
    public Witness witness(Layout layout, ModSet mods) {
        return new WitnessFinder(search).witness(layout, mods);
    }

    /** The gap between two things of a witness, by their names. */
    public static Gap gap(Witness witness, String one, String other) {
        return findGap(witness, one, other)
                .orElseThrow(() -> new IllegalArgumentException(
                        "no gap between " + one + " and " + other + " in " + witness.gaps()));
    }

    private static Optional<Gap> findGap(Witness witness, String one, String other) {
        return witness.gaps().stream()
                .filter(g -> (g.one().equals(one) && g.other().equals(other))
                        || (g.one().equals(other) && g.other().equals(one)))
                .findFirst();
    }
}
