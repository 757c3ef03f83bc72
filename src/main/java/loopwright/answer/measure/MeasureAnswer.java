package loopwright.answer.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import loopwright.answer.Halt;
import loopwright.answer.measure.Ranking.Look;
import loopwright.catalog.Catalog;
import loopwright.catalog.measure.Replacement;
import loopwright.fit.FitCase;
import loopwright.fit.FitResult;
import loopwright.fit.FitSearch;
import loopwright.fit.FitWish;
import loopwright.fit.FoundLayout;
import loopwright.fit.UnknownLayout;
import loopwright.fit.Witness;
import loopwright.fit.WitnessFinder;

/** Which dimension to measure first in one chassis: what is not known, then what is worth a reading. */
public final class MeasureAnswer {

    /** Layouts that may be searched anew for exact counts: some seconds of work, the same on every machine. */
    private static final int SEARCHED_MAX = 20_000;

    /** So many layouts are quicker looked at one after the other. */
    private static final int ALONE_MAX = 100;

    private final FitCase fitCase;
    private final MeasureView view;
    private final Halt halt;
    private final FitResult result;
    private final Stakes stakes;
    private final List<FoundLayout> looked;
    private final List<Waiting> waiting;
    private final List<Worth> worths;
    private final Optional<Witness> witness;
    private final int dimensions;
    /** Why it was cut short: empty, or one reason. */
    private final List<String> cutShort = new ArrayList<>();

    /**
     * Searches.
     *
     * @param reread the catalogue with some more lengths replaced
     */
    public MeasureAnswer(FitCase fitCase, MeasureView view, Function<List<Replacement>, Catalog> reread, Halt halt) {
        this.fitCase = fitCase;
        this.view = view;
        this.halt = halt;
        FitSearch search =
                new FitSearch(fitCase, FitWish.ALL, () -> halt.because().isPresent());
        this.result = search.run();
        this.stakes = Stakes.of(fitCase);
        this.looked =
                result.fits().stream().filter(f -> shows(f.layout().key())).toList();
        this.waiting = Waiting.of(
                result.unknown().stream().filter(u -> shows(u.layout().key())).toList(),
                new MeasuredNames(fitCase),
                new Whereabouts(fitCase.catalog()));
        Ranking ranking = new Ranking(fitCase, stakes.lateCents());
        List<Look> looks = looks(search);
        looks.forEach(ranking::add);
        isStopped();
        List<Worth> ranked = ranking.ranked();
        this.dimensions = ranked.size();
        this.worths = exact(ranked.subList(0, Math.min(view.top(), ranked.size())), reread);
        this.witness =
                view.key().isPresent() ? looks.stream().map(Look::witness).findFirst() : Optional.empty();
    }

    /** Every layout as it stands, in their order. Two halves at a time: each has a finder of its own. */
    private List<Look> looks(FitSearch search) {
        int half = (looked.size() + 1) / 2;
        boolean both = looked.size() > ALONE_MAX;
        if (!both) {
            return looks(search, looked);
        }
        FitSearch other = new FitSearch(copy(), FitWish.ALL, () -> false);
        return Stream.of(0, 1)
                .parallel()
                .map(i -> i == 0
                        ? looks(search, looked.subList(0, half))
                        : looks(other, looked.subList(half, looked.size())))
                .toList()
                .stream()
                .flatMap(List::stream)
                .toList();
    }

    private FitCase copy() {
        return new FitCase(fitCase.catalog(), fitCase.chassis(), fitCase.brief());
    }

    private List<Look> looks(FitSearch search, List<FoundLayout> some) {
        WitnessFinder finder = new WitnessFinder(search);
        List<Look> out = new ArrayList<>();
        for (FoundLayout found : some) {
            if (halt.because().isPresent()) {
                break;
            }
            out.add(Look.at(
                    found.layout(),
                    finder.witness(found.layout(), found.needed().get(0))));
        }
        return out;
    }

    private boolean shows(String key) {
        return view.key().isEmpty() || view.key().get().equals(key);
    }

    private boolean isStopped() {
        if (cutShort.isEmpty()) {
            halt.because().ifPresent(cutShort::add);
        }
        return !cutShort.isEmpty();
    }

    /** The first dimensions with what hangs on them, as long as there is time. */
    private List<Worth> exact(List<Worth> first, Function<List<Replacement>, Catalog> reread) {
        HangSearch search = new HangSearch(
                fitCase, result.fits(), view.key().flatMap(k -> looked.stream().findFirst()), reread, halt);
        int each = 2 * (result.fits().size() + result.unknown().size());
        List<Worth> out = new ArrayList<>();
        for (int i = 0; i < first.size(); i++) {
            Worth worth = first.get(i);
            boolean mayBe = i == 0 || view.key().isPresent() || (long) (i + 1) * each <= SEARCHED_MAX;
            Optional<Hang> hang = mayBe && !isStopped() ? search.of(worth.measurable()) : Optional.empty();
            out.add(hang.map(worth::with).orElse(worth));
        }
        isStopped(); // in the middle of the last
        out.sort(Worth.MOST_FIRST);
        return List.copyOf(out);
    }

    /** The case that was asked about. */
    public FitCase fitCase() {
        return fitCase;
    }

    /** What was asked. */
    public MeasureView view() {
        return view;
    }

    /** How many layouts fit, looked at or not. */
    public int fitsInAll() {
        return result.fits().size();
    }

    /** The layouts that were looked at: all that fit, or the one that was asked for. */
    public List<FoundLayout> looked() {
        return looked;
    }

    /** How many layouts wait for something to be measured, of those that were asked for. */
    public List<UnknownLayout> unknown() {
        return result.unknown().stream().filter(u -> shows(u.layout().key())).toList();
    }

    /** What is not known, and how many layouts wait for it. */
    public List<Waiting> waiting() {
        return waiting;
    }

    /** The dimensions that are shown, what is worth most first. */
    public List<Worth> worths() {
        return worths;
    }

    /** In how many dimensions something is not sure. */
    public int dimensions() {
        return dimensions;
    }

    /** What a clash costs. */
    public Stakes stakes() {
        return stakes;
    }

    /** The way to have the one layout that was asked for, with the gentlest mods that it needs. */
    public Optional<Witness> witness() {
        return witness;
    }

    /** Whether there is anything to answer: a layout that fits or waits. */
    public boolean isAbout() {
        return !looked.isEmpty() || !waiting.isEmpty();
    }

    /** Why something may be missing, where it may be. */
    public Optional<String> incompleteBecause() {
        return result.incompleteBecause()
                .map(b -> b.equals("interrupted") ? halt.because().orElse(b) : b)
                .or(() -> cutShort.stream().findFirst());
    }
}
