package loopwright.fit;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import loopwright.fit.Attempts.Group;
import loopwright.fit.Attempts.Scene;
import loopwright.fit.HangFacts.Open;
import loopwright.fit.conflict.ConflictSearch;
import loopwright.fit.conflict.FactSet;
import loopwright.fit.conflict.Smallest;

/**
 * Finds every smallest set of facts and wishes that has to be given up for the rest to be had (why.md, <em>corrections</em>), each with
 * a candidate that breaks just it.
 *
 * <p>Candidates are walked like layouts, but a clash is noted instead of refused; what already breaks all that a known correction
 * does is not walked further.
 */
public final class Breaches {

    private final Attempts attempts;
    private final WishedCase wished;
    private final FactBook book;
    private final BooleanSupplier interrupted;
    private final FactSet radiatorWishes;
    private final Smallest<Candidate> found = new Smallest<>();
    private final List<Beyond> walked = new ArrayList<>();
    /** Stacks among the parts of the placing that is walked. */
    private final IdentityHashMap<HangFacts.Option, HangFacts.Option> among = new IdentityHashMap<>();

    /** Sets the search up. */
    public Breaches(WishedCase wished, BooleanSupplier interrupted) {
        this.wished = wished;
        this.book = new FactBook();
        this.interrupted = interrupted;
        FactSet wishes = FactSet.NONE;
        for (Wish wish : wished.wishes()) {
            int number = book.number(Fact.Kind.WISH, wish.text());
            wishes = wish instanceof Wish.RadiatorAt ? wishes.with(number) : wishes;
        }
        this.radiatorWishes = wishes;
        this.attempts = new Attempts(wished, book, interrupted);
    }

    /** The facts that came up, by number. */
    public FactBook book() {
        return book;
    }

    /** The wishes and the case. */
    public WishedCase wished() {
        return wished;
    }

    /**
     * The corrections.
     *
     * @param smallest each with a candidate that breaks just it; the empty set when everything can be had
     * @param whole whether there are no others
     */
    public record Corrections(List<Candidate> smallest, boolean whole) {
        /** Copies. */
        public Corrections {
            smallest = List.copyOf(smallest);
        }
    }

    /**
     * Whether some candidate keeps all of some facts and wishes; asked afresh, whatever corrections are known.
     *
     * <p>After {@link #run}.
     */
    public boolean canHold(FactSet kept) {
        Beyond widest = walked.get(walked.size() - 1);
        return new KeptWalk(
                        attempts, attempts.scenes(widest), new KeptWalk.Kept(kept, false), radiatorWishes, interrupted)
                .find()
                .isPresent();
    }

    /** A candidate that breaks nothing at all, if there is one; quicker than {@link #run} when only that is asked. */
    public Optional<Candidate> whole() {
        return new KeptWalk(
                        attempts,
                        attempts.scenes(Beyond.NOTHING),
                        new KeptWalk.Kept(FactSet.NONE, true),
                        radiatorWishes,
                        interrupted)
                .find();
    }

    /** What a candidate lacks for the pairs that it breaks, re-checked by plain geometry. */
    public List<Lacking.Lack> lacks(Candidate candidate) {
        return new Lacking(attempts).of(candidate);
    }

    /** The dimensions to measure of a body that a candidate has and that is not known. */
    public List<String> toMeasure(Fact fact, Candidate candidate) {
        Bodies bodies = attempts.maker().bodies();
        List<Occupant> all = new ArrayList<>();
        candidate.hangs().forEach(h -> all.add(h.occupant()));
        candidate.builtIn().forEach(b -> all.add(bodies.get(b)));
        candidate.placed().bodies().forEach(b -> all.add(bodies.get(b)));
        return all.stream()
                .filter(o -> o.body().id().equals(fact.about()))
                .flatMap(o -> o.unknowns().stream())
                .distinct()
                .sorted()
                .toList();
    }

    /** A walk over one scene: what its mod set and placing break, and the stacks so far. */
    private record Step(
            Group group, Scene scene, FactSet broken, FactSet met, List<HangFacts.Option> stacks, List<Open> open) {}

    /** Runs it. */
    public Corrections run() {
        Beyond beyond = Beyond.NOTHING;
        boolean whole = attempts.isWhole() && walk(beyond);
        // What is found with other parts can be about yet others: until nothing is added.
        Beyond more = Beyond.helpsWith(found.sets(), book, wished);
        while (whole && !more.equals(beyond)) {
            beyond = more;
            whole = walk(beyond);
            more = beyond.or(Beyond.helpsWith(found.sets(), book, wished));
        }
        return corrections(whole);
    }

    private boolean walk(Beyond beyond) {
        walked.add(beyond);
        Attempts.Scenes scenes = attempts.scenes(beyond);
        for (Group group : attempts.groups()) {
            List<List<HangFacts.Option>> options = scenes.options(group);
            for (PlacedFacts.Placed placed : scenes.placed(group)) {
                if (interrupted.getAsBoolean()) {
                    return false;
                }
                among.clear();
                Scene scene = new Scene(placed, options);
                extend(new Step(group, scene, placed.facts(), FactSet.NONE, List.of(), List.of()), 0);
            }
        }
        return scenes.whole();
    }

    private Corrections corrections(boolean whole) {
        return new Corrections(found.all().stream().map(Smallest.Kept::with).toList(), whole);
    }

    /** Whether everything that starts like this breaks all of a known correction, whichever mod set of the group is taken. */
    private boolean isHopeless(Group group, FactSet broken) {
        for (Smallest.Kept<ModSet> set : group.sets()) {
            if (!found.covers(set.set().or(broken))) {
                return false;
            }
        }
        return true;
    }

    private void extend(Step step, int frame) {
        if (isHopeless(step.group(), step.broken())) {
            return;
        }
        if (frame == step.scene().options().size()) {
            settle(step);
            return;
        }
        for (HangFacts.Option option : step.scene().options().get(frame)) {
            if (!option.meets().minus(step.met()).isEmpty()) {
                extend(with(step, option), frame + 1);
            }
        }
        extend(step, frame + 1);
    }

    private Step with(Step step, HangFacts.Option option) {
        HangFacts.Option here = among.computeIfAbsent(
                option, o -> attempts.among(o, step.scene().placed()));
        List<Open> open = new ArrayList<>(step.open());
        open.addAll(here.open());
        FactSet broken = step.broken().or(here.facts());
        for (HangFacts.Option other : step.stacks()) {
            if (here.hang().isPresent() && other.hang().isPresent()) {
                broken = broken.or(
                        attempts.between(other.hang().get(), here.hang().get(), open));
            }
        }
        List<HangFacts.Option> stacks = new ArrayList<>(step.stacks());
        stacks.add(here);
        return new Step(step.group(), step.scene(), broken, step.met().or(here.meets()), stacks, open);
    }

    /** All stacks are picked: what is left depends on positions. */
    private void settle(Step step) {
        FactSet broken = step.broken().or(radiatorWishes.minus(step.met()));
        if (isHopeless(step.group(), broken)) {
            return;
        }
        List<Open> open =
                step.open().stream().filter(o -> !broken.has(o.fact())).toList();
        if (canStand(step.stacks(), open)) {
            offer(step, broken);
            return;
        }
        List<Integer> facts = open.stream().map(Open::fact).distinct().toList();
        ConflictSearch search =
                new ConflictSearch(facts.size(), kept -> canStand(step.stacks(), only(open, facts, kept)), interrupted);
        for (FactSet dropped : search.run().corrections()) {
            FactSet more = broken;
            for (int i : dropped.numbers()) {
                more = more.with(facts.get(i));
            }
            offer(step, more);
        }
    }

    private static List<Open> only(List<Open> open, List<Integer> facts, FactSet kept) {
        return open.stream().filter(o -> kept.has(facts.indexOf(o.fact()))).toList();
    }

    private boolean canStand(List<HangFacts.Option> stacks, List<Open> open) {
        if (open.isEmpty()) {
            return true;
        }
        List<int[]> sides = new ArrayList<>();
        open.forEach(o -> sides.addAll(o.sides()));
        return new Positions(attempts.maker().pairs().domains(hangs(stacks)), sides).feasible(0);
    }

    private static List<Hang> hangs(List<HangFacts.Option> stacks) {
        return stacks.stream()
                .map(HangFacts.Option::hang)
                .flatMap(Optional::stream)
                .toList();
    }

    private void offer(Step step, FactSet broken) {
        for (Smallest.Kept<ModSet> set : step.group().sets()) {
            FactSet all = set.set().or(broken);
            if (!found.covers(all)) {
                found.offer(
                        all,
                        new Candidate(
                                all,
                                set.with(),
                                step.group().builtIn(),
                                step.scene().placed(),
                                step.stacks()));
            }
        }
    }

    Attempts attempts() {
        return attempts;
    }
}
