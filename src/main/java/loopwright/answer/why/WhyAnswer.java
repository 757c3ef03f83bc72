package loopwright.answer.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import loopwright.answer.Halt;
import loopwright.answer.Once;
import loopwright.fit.Breaches;
import loopwright.fit.Candidate;
import loopwright.fit.Fact;
import loopwright.fit.FitCase;
import loopwright.fit.Layout;
import loopwright.fit.MountFrame;
import loopwright.fit.WishedCase;
import loopwright.fit.conflict.FactSet;
import loopwright.fit.conflict.HittingSets;
import loopwright.rank.ModBill;

/** Why wishes of what fits cannot be had together in one chassis, and every way out; or how they can. */
public final class WhyAnswer {

    /** Conflicts told; the first are the smallest. */
    private static final int CONFLICTS_MAX = 12;

    private final FitCase fitCase;
    private final Halt halt;
    private final Breaches breaches;
    private final Breaches.Corrections corrections;
    private final FactWords words;
    private final HittingSets.Hitting hitting;
    private final List<BuildWish> buildWishes;
    private final Supplier<BuildWhy> builds;

    /**
     * Looks for conflicts.
     *
     * @param wishes without any of what fits, a radiator on some mount is wished
     */
    public WhyAnswer(FitCase fitCase, Wishes wishes, Halt halt) {
        this.fitCase = fitCase;
        this.halt = halt;
        this.breaches = new Breaches(
                new WishedCase(fitCase, wishes.ofFit()), () -> halt.because().isPresent());
        this.buildWishes = wishes.ofBuilds();
        this.corrections = breaches.run();
        this.words = new FactWords(breaches);
        this.hitting = corrections.whole()
                ? HittingSets.upTo(
                        corrections.smallest().stream().map(Candidate::broken).toList(), CONFLICTS_MAX)
                : new HittingSets.Hitting(List.of(), false);
        this.builds = Once.of(
                () -> new BuildWhy(breaches, breaches.wished().isAsked() ? wishes() : List.of(), buildWishes, halt));
    }

    /** What builds have to say; asked for only where something was wished of builds, or where nothing hinders what fits. */
    public BuildWhy builds() {
        return builds.get();
    }

    /** The wishes of builds, each as it was written and in words. */
    public List<Stated> buildWishes() {
        return buildWishes.stream()
                .map(w -> Stated.of(w.text(), w.words(fitCase.brief().terms().currency())))
                .toList();
    }

    /** Whether builds were asked about. */
    public boolean asksBuilds() {
        return !buildWishes.isEmpty();
    }

    /** The case that was asked about. */
    public FitCase fitCase() {
        return fitCase;
    }

    /** The wishes, each as it was written and in words. */
    public List<Stated> wishes() {
        return breaches.wished().wishes().stream()
                .map(w -> Stated.of(w.text(), WishWords.of(w, fitCase.chassis())))
                .toList();
    }

    /** Whether nothing can be missing. */
    public boolean isComplete() {
        return incompleteBecause().isEmpty();
    }

    /** Why something may be missing, where it may be. */
    public Optional<String> incompleteBecause() {
        boolean builtWhole = !asksBuilds() || builds.get().isWhole();
        if (corrections.whole() && builtWhole) {
            return Optional.empty();
        }
        return halt.because().or(() -> Optional.of("too many mods or parts to look at all"));
    }

    /** How all wishes can be had: the gentlest mods; empty when they cannot. */
    public Optional<Candidate> had() {
        return corrections.smallest().stream().filter(c -> c.broken().isEmpty()).findFirst();
    }

    /** The layout of what can be had; only its wished mounts carry something. */
    public Optional<Layout> layout() {
        return had().filter(c -> !c.shapes().isEmpty()).map(this::layout);
    }

    private Layout layout(Candidate candidate) {
        List<Layout.Stack> stacks = new ArrayList<>();
        for (MountFrame frame : fitCase.frames()) {
            candidate.shapeAt(frame).ifPresent(s -> stacks.add(new Layout.Stack(frame, s)));
        }
        return new Layout(fitCase.chassis().id(), stacks);
    }

    /** Whether there are conflicts that {@link #conflicts} leaves out. */
    public boolean moreConflicts() {
        return !hitting.whole();
    }

    /**
     * The smallest conflicts, each asked again: it cannot hold, and without any one of its facts it can.
     *
     * @throws IllegalStateException if one can hold after all: our own bug
     */
    public List<Conflict> conflicts() {
        List<Conflict> out = new ArrayList<>();
        for (FactSet conflict : hitting.sets()) {
            if (halt.because().isEmpty()
                    && breaches.canHold(conflict)
                    && halt.because().isEmpty()) {
                throw new IllegalStateException("this can hold after all: "
                        + breaches.book().facts(conflict).stream().map(Fact::id).toList());
            }
            List<Stated> facts = new ArrayList<>();
            for (Fact fact : breaches.book().facts(conflict)) {
                facts.add(without(conflict, fact).stream()
                        .map(c -> words.fact(fact, c))
                        .min(Comparator.comparingDouble(Stated::amount))
                        .orElseThrow(() -> new IllegalStateException("no candidate keeps the rest of " + conflict)));
            }
            out.add(new Conflict(facts));
        }
        return out;
    }

    /** The candidates that break just one fact of a conflict. */
    private List<Candidate> without(FactSet conflict, Fact fact) {
        FactSet only = FactSet.of(fact.number());
        return corrections.smallest().stream()
                .filter(c -> c.broken().and(conflict).equals(only))
                .toList();
    }

    /** Everything that can be given up or changed so that the rest can be had, cheapest first; each re-checked. */
    public List<WayOut> waysOut() {
        List<WayOut> out = new ArrayList<>();
        for (Candidate candidate : corrections.smallest()) {
            if (!candidate.broken().isEmpty()) {
                out.add(wayOut(candidate));
            }
        }
        out.sort(WayOut.CHEAPEST_FIRST);
        return out;
    }

    private WayOut wayOut(Candidate candidate) {
        List<Fact> facts = breaches.book().facts(candidate.broken());
        List<Stated> changes = facts.stream().map(f -> change(f, candidate)).toList();
        ModBill bill = ModBill.of(fitCase.catalog(), fitCase.chassis(), candidate.mods());
        return new WayOut(
                changes,
                kind(facts),
                candidate.mods(),
                new WayOut.Effort(
                        bill.costCents(fitCase.brief().terms()),
                        bill.handsOnMin(),
                        bill.days(fitCase.brief().terms())),
                instead(facts, candidate));
    }

    /** Other radiators for the one wish that is given up; the smaller part where just that is in the way. */
    private List<Stated> instead(List<Fact> facts, Candidate candidate) {
        if (facts.size() != 1 || halt.because().isPresent()) {
            return List.of();
        }
        Fact fact = facts.get(0);
        if (fact.kind() == Fact.Kind.CLEAR) {
            return new Smaller(breaches.wished(), halt)
                    .of(words.lack(fact, candidate), candidate).stream().toList();
        }
        return fact.kind() == Fact.Kind.WISH && breaches.wished().isAsked()
                ? new Instead(breaches.wished(), halt).of(words.wish(fact))
                : List.of();
    }

    private Stated change(Fact fact, Candidate candidate) {
        return new ChangeWords(breaches, words).of(fact, candidate);
    }

    private static WayOut.Kind kind(List<Fact> facts) {
        if (facts.stream().allMatch(f -> f.kind() == Fact.Kind.WISH)) {
            return WayOut.Kind.WISHES;
        }
        boolean inHand = facts.stream().allMatch(f -> switch (f.kind()) {
            case WISH, FORBIDDEN, VISIBLE_CUTS, CUTS, CHOICE, OPEN, KNOWN -> true;
            case NEEDS, EXCLUDES, PARTS, PLACE, SEAT, OUTSIDE, CLEAR -> false;
        });
        return inHand ? WayOut.Kind.BRIEF : WayOut.Kind.OTHERWISE;
    }
}
