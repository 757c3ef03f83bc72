package loopwright.answer;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import loopwright.answer.Twins.TwinLayout;
import loopwright.fit.FitCase;
import loopwright.fit.FitQuery;
import loopwright.fit.FitResult;
import loopwright.fit.FitSearch;
import loopwright.fit.FitWish;
import loopwright.fit.FoundLayout;
import loopwright.fit.Layout;
import loopwright.fit.ModSet;
import loopwright.fit.WitnessFinder;

/**
 * Which layouts of a case die, and how many come alive, when lengths are others; a layout is the same as {@link Flips} has
 * it. Only fits are looked at: what is unknown neither dies nor lives.
 */
public final class Fates {

    private final FitCase before;
    private final List<Layout> fits;
    private final Set<String> texts;
    private final Halt halt;

    /**
     * Fates of what was found.
     *
     * @param fits every layout that fits the case
     */
    public Fates(FitCase before, List<FoundLayout> fits, Halt halt) {
        this.before = before;
        this.fits = fits.stream().map(FoundLayout::layout).toList();
        this.texts = new HashSet<>(this.fits.stream().map(Layout::text).toList());
        this.halt = halt;
    }

    /**
     * What another case makes of them.
     *
     * @param died texts of layouts that no longer fit, for some of the parts that they are made of
     * @param alive texts, as they would be here, of layouts that only fit there
     * @param whole whether the other case was searched to its end
     */
    public record Fate(Set<String> died, Set<String> alive, boolean whole) {}

    /** Searches the other case. */
    public Fate in(FitCase after) {
        FitResult result =
                new FitSearch(after, FitWish.ALL, () -> halt.because().isPresent()).run();
        Set<String> there = new HashSet<>();
        result.fits().forEach(f -> there.add(f.layout().text()));
        Set<String> died = new TreeSet<>();
        Twins later = new Twins(before, after);
        for (Layout layout : fits) {
            for (TwinLayout twin : later.of(layout)) {
                if (!there.contains(twin.text(layout))) {
                    died.add(layout.text());
                }
            }
        }
        Set<String> alive = new TreeSet<>();
        Twins earlier = new Twins(after, before);
        for (FoundLayout found : result.fits()) {
            for (TwinLayout twin : earlier.of(found.layout())) {
                if (!texts.contains(twin.text(found.layout()))) {
                    alive.add(twin.text(found.layout()));
                }
            }
        }
        return new Fate(died, alive, result.isComplete());
    }

    /**
     * Whether one layout still fits another case with any of the mod sets it needs, wherever its parts and stacks then are: for
     * all parts that it is made of.
     */
    public boolean keeps(FitCase after, FoundLayout found) {
        FitSearch search = new FitSearch(after, FitWish.ALL, () -> false);
        List<ModSet> valid = new FitQuery(search).validSets();
        List<ModSet> sets = found.needed().stream().filter(valid::contains).toList();
        WitnessFinder finder = new WitnessFinder(search);
        for (TwinLayout twin : new Twins(before, after).of(found.layout())) {
            List<Layout.Stack> stacks = new ArrayList<>();
            for (Layout.Stack stack : found.layout().stacks()) {
                stacks.add(new Layout.Stack(
                        after.frames().get(stack.frame().index()), twin.shapes().get(stacks.size())));
            }
            Layout there = new Layout(after.chassis().id(), stacks);
            if (sets.stream().noneMatch(mods -> finder.find(there, mods).isPresent())) {
                return false;
            }
        }
        return true;
    }
}
