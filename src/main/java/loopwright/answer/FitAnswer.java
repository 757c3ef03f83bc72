package loopwright.answer;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import loopwright.answer.why.WhyAnswer;
import loopwright.answer.why.Wishes;
import loopwright.fit.FitCase;
import loopwright.fit.FitResult;
import loopwright.fit.FitSearch;
import loopwright.fit.FitWish;
import loopwright.fit.FoundLayout;
import loopwright.fit.Growth;
import loopwright.fit.Layout;
import loopwright.fit.ModSet;
import loopwright.fit.RoomLeft;
import loopwright.fit.UnknownLayout;
import loopwright.fit.Witness;
import loopwright.fit.WitnessFinder;
import loopwright.rank.RatedStacks;
import loopwright.rank.StackAir;

/** What fits one chassis: the search's result, and for each layout a way to have it and what it conducts. */
public final class FitAnswer {

    /** How long what was found before a stop may be told, nanoseconds. */
    private static final long GRACE_NS = 5_000_000_000L;

    private final FitCase fitCase;
    private final FitWish wish;
    private final FitView view;
    private final Halt halt;
    private final FitSearch search;
    private final FitResult result;
    private final long searchedNs;
    private final WitnessFinder finder;
    private final StackAir air;
    private final RatedStacks rated;
    private final Supplier<WhyAnswer> why;
    private final RoomLeft room;
    private final Map<String, Double> conductances = new HashMap<>();
    /** Why the telling was cut short: empty, or one reason. */
    private final List<String> cutShort = new ArrayList<>();

    /**
     * Searches.
     *
     * @param view which layouts are shown
     */
    public FitAnswer(FitCase fitCase, FitWish wish, FitView view, Halt halt) {
        this.fitCase = fitCase;
        this.wish = wish;
        this.view = view;
        this.halt = halt;
        this.search = new FitSearch(fitCase, wish, () -> halt.because().isPresent());
        this.result = search.run();
        this.searchedNs = System.nanoTime();
        this.finder = new WitnessFinder(search);
        this.air = new StackAir(fitCase);
        this.rated = new RatedStacks(fitCase, Sites.model(fitCase));
        this.why = Once.of(() -> new WhyAnswer(fitCase, Wishes.ofNothing(fitCase, wish), halt));
        this.room = new RoomLeft(fitCase);
    }

    /** The case that was asked about. */
    public FitCase fitCase() {
        return fitCase;
    }

    /** How the question was narrowed. */
    public FitWish wish() {
        return wish;
    }

    /** Layouts that fit and are to be shown. */
    public List<FoundLayout> fits() {
        return result.fits().stream().filter(f -> view.shows(f.layout())).toList();
    }

    /** Layouts to be shown that nobody can answer for until something is measured. */
    public List<UnknownLayout> unknown() {
        return result.unknown().stream().filter(u -> view.shows(u.layout())).toList();
    }

    /** Layouts that fit, shown or not. */
    public List<FoundLayout> all() {
        return result.fits();
    }

    /** How many layouts fit, shown or not. */
    public int fitsInAll() {
        return result.fits().size();
    }

    /** Why nothing fits; for where that is so. */
    public WhyAnswer why() {
        return why.get();
    }

    /** Why layouts may be missing, where they may be. */
    public Optional<String> incompleteBecause() {
        return result.incompleteBecause()
                .map(b -> b.equals("interrupted") ? halt.because().orElse(b) : b)
                .or(() -> cutShort.stream().findFirst());
    }

    /**
     * Whether to stop telling layouts: from then on the answer is incomplete. When the search itself was stopped, what it
     * found may still be told for a few seconds.
     */
    public boolean stopsHere() {
        boolean grace = !result.isComplete() && System.nanoTime() - searchedNs < GRACE_NS;
        if (!grace && cutShort.isEmpty()) {
            halt.because().ifPresent(cutShort::add);
        }
        return !cutShort.isEmpty();
    }

    /** The best way to have a layout with a mod set, re-checked. */
    public Witness witness(Layout layout, ModSet mods) {
        return finder.witness(layout, mods);
    }

    /** How far each measure could grow in a layout had in such a way, and what would still go on the empty mounts. */
    public List<Growth> roomLeft(Witness witness) {
        return room.of(witness);
    }

    /** Whether one layout is asked for: then the room it leaves is told. */
    public boolean isAboutOneLayout() {
        return view.key().isPresent();
    }

    /** What all radiators of a layout conduct at the speed the trade sizes at, W/K. */
    public double conductanceWPerK(Layout layout, ModSet mods) {
        return layout.stacks().stream()
                .mapToDouble(s -> conductanceWPerK(s, mods))
                .sum();
    }

    private double conductanceWPerK(Layout.Stack stack, ModSet mods) {
        String key = stack.shape().textWithoutEnd()
                + air.at(
                        stack.frame().mount(),
                        stack.shape().pattern(),
                        stack.shape().fanThickness().valueHmm(),
                        mods);
        return conductances.computeIfAbsent(key, k -> rated.conductanceWPerK(stack, mods));
    }
}
