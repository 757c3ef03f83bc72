package loopwright.answer;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import loopwright.answer.Flips.Alive;
import loopwright.answer.Flips.Changed;
import loopwright.answer.Flips.Died;
import loopwright.answer.Flips.Doubt;
import loopwright.answer.Flips.Hung;
import loopwright.answer.Flips.Stand;
import loopwright.answer.Flips.State;
import loopwright.answer.Twins.TwinLayout;
import loopwright.fit.ClashFinder;
import loopwright.fit.FitCase;
import loopwright.fit.FitResult;
import loopwright.fit.FitSearch;
import loopwright.fit.FitWish;
import loopwright.fit.FoundLayout;
import loopwright.fit.Gap;
import loopwright.fit.Layout;
import loopwright.fit.Shape;
import loopwright.fit.UnknownLayout;
import loopwright.fit.WitnessFinder;

/** Finds what flips between two cases that differ in lengths only: every layout of both is looked for and compared. */
public final class FlipSearch {

    private final Side before;
    private final Side after;
    private final ClashFinder clashes;
    private final Halt halt;

    private final List<Died> died = new ArrayList<>();
    private final List<Alive> alive = new ArrayList<>();
    private final List<Changed> verdicts = new ArrayList<>();
    private final List<Changed> otherMods = new ArrayList<>();
    private final List<Doubt> doubts = new ArrayList<>();

    private FlipSearch(Side before, Side after, Halt halt) {
        this.before = before;
        this.after = after;
        this.clashes = new ClashFinder(after.search);
        this.halt = halt;
    }

    /** What flips in one chassis and brief. */
    public static Flips flips(FitCase before, FitCase after, Halt halt) {
        return new FlipSearch(new Side(before, halt), new Side(after, halt), halt).run();
    }

    /** One of the two cases: its layouts by their texts, and their tightest places. */
    private static final class Side {
        private final FitCase fitCase;
        private final FitSearch search;
        private final FitResult result;
        private final WitnessFinder finder;
        private final Map<String, FoundLayout> fits = new HashMap<>();
        private final Map<String, UnknownLayout> unknown = new HashMap<>();
        private final Map<String, Gap> tightest = new HashMap<>();

        private Side(FitCase fitCase, Halt halt) {
            this.fitCase = fitCase;
            this.search =
                    new FitSearch(fitCase, FitWish.ALL, () -> halt.because().isPresent());
            this.result = search.run();
            this.finder = new WitnessFinder(search);
            result.fits().forEach(f -> fits.put(f.layout().text(), f));
            result.unknown().forEach(u -> unknown.put(u.layout().text(), u));
        }

        private List<Layout> layouts() {
            List<Layout> out = new ArrayList<>();
            result.fits().forEach(f -> out.add(f.layout()));
            result.unknown().forEach(u -> out.add(u.layout()));
            return out;
        }

        private State state(String text) {
            if (fits.containsKey(text)) {
                return State.FITS;
            }
            return unknown.containsKey(text) ? State.UNKNOWN : State.NOT;
        }

        private Stand stand(FoundLayout found) {
            return new Stand(found.layout(), found.needed().get(0), tightest(found));
        }

        /** The tightest place with the gentlest set that is needed. */
        private Gap tightest(FoundLayout found) {
            return tightest.computeIfAbsent(
                    found.layout().text(),
                    t -> finder.witness(found.layout(), found.needed().get(0)).tightest());
        }

        private FoundLayout found(String text) {
            return Optional.ofNullable(fits.get(text)).orElseThrow();
        }

        private UnknownLayout open(String text) {
            return Optional.ofNullable(unknown.get(text)).orElseThrow();
        }
    }

    /**
     * The same parts in the same way, before and after.
     *
     * @param shapes stack by stack, with the dimensions after
     */
    private record Pair(String before, String after, List<Shape> shapes, List<Hung> only) {}

    private Flips run() {
        Optional<String> stopped = before.result.incompleteBecause().or(after.result::incompleteBecause);
        int same = 0;
        if (stopped.isEmpty()) {
            for (Pair pair : pairs()) {
                if (halt.because().isPresent()) {
                    break;
                }
                same += compared(pair) ? 1 : 0;
            }
        }
        Optional<String> because = stopped.map(s -> halt.because().orElse(s)).or(halt::because);
        return new Flips(died, alive, verdicts, otherMods, doubts, same, because);
    }

    private List<Pair> pairs() {
        Map<String, Pair> out = new TreeMap<>();
        Twins later = new Twins(before.fitCase, after.fitCase);
        for (Layout layout : before.layouts()) {
            for (TwinLayout twin : later.of(layout)) {
                Pair pair = new Pair(layout.text(), twin.text(layout), twin.shapes(), twin.only());
                out.put(pair.before() + "\n" + pair.after(), pair);
            }
        }
        Twins earlier = new Twins(after.fitCase, before.fitCase);
        for (Layout layout : after.layouts()) {
            List<Shape> shapes =
                    layout.stacks().stream().map(Layout.Stack::shape).toList();
            for (TwinLayout twin : earlier.of(layout)) {
                Pair pair = new Pair(twin.text(layout), layout.text(), shapes, twin.only());
                out.putIfAbsent(pair.before() + "\n" + pair.after(), pair);
            }
        }
        return List.copyOf(out.values());
    }

    /** Notes a flip; answers whether it fits before and after in the same way. */
    private boolean compared(Pair pair) {
        State was = before.state(pair.before());
        State is = after.state(pair.after());
        if (was == State.FITS && is == State.FITS) {
            return lives(pair);
        }
        if (was == State.UNKNOWN || is == State.UNKNOWN) {
            if (was != is) {
                doubt(pair, was, is);
            }
        } else if (was == State.FITS) {
            FoundLayout gone = before.found(pair.before());
            List<Layout.Stack> stacks = new ArrayList<>();
            for (int i = 0; i < pair.shapes().size(); i++) {
                int frame = gone.layout().stacks().get(i).frame().index();
                stacks.add(new Layout.Stack(
                        after.fitCase.frames().get(frame), pair.shapes().get(i)));
            }
            died.add(new Died(
                    gone.layout(),
                    pair.only(),
                    gone.needed().get(0),
                    clashes.clash(stacks, gone.needed().get(0))));
        } else {
            FoundLayout come = after.found(pair.after());
            alive.add(new Alive(come.layout(), pair.only(), come.needed().get(0), after.tightest(come)));
        }
        return false;
    }

    private boolean lives(Pair pair) {
        Changed both = new Changed(
                before.stand(before.found(pair.before())), after.stand(after.found(pair.after())), pair.only());
        if (both.was().tightest().verdict() != both.is().tightest().verdict()) {
            verdicts.add(both);
            return false;
        }
        if (both.needsOtherMods()) {
            otherMods.add(both);
            return false;
        }
        return true;
    }

    private void doubt(Pair pair, State was, State is) {
        Layout layout = switch (is) {
            case FITS -> after.found(pair.after()).layout();
            case UNKNOWN -> after.open(pair.after()).layout();
            case NOT -> before.open(pair.before()).layout();
        };
        List<String> measure = is == State.UNKNOWN
                ? after.open(pair.after()).measure()
                : before.open(pair.before()).measure();
        doubts.add(new Doubt(layout, pair.only(), was, is, measure));
    }
}
