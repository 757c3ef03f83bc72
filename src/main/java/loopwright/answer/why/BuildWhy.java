package loopwright.answer.why;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import loopwright.answer.Halt;
import loopwright.answer.Sites;
import loopwright.answer.why.BuildWish.Figure;
import loopwright.catalog.brief.BriefLimits;
import loopwright.fit.Breaches;
import loopwright.fit.FitCase;
import loopwright.fit.Narrowed;
import loopwright.fit.conflict.ConflictSearch;
import loopwright.fit.conflict.FactSet;
import loopwright.loop.MachineModel;
import loopwright.rank.Attainable;
import loopwright.rank.Build;
import loopwright.rank.BuildLimits;

/** Why no build keeps all that is wished and the brief's limits, and every way out; or a build that does. */
public final class BuildWhy {

    private static final String LIMIT = "limit:";
    private static final String WISH = "wish:";

    /** Conflicts and ways out whose best figure is looked for; each takes a search. */
    private static final int FIGURED_MAX = 6;

    private final FitCase fitCase;
    private final Breaches breaches;
    private final Halt halt;
    private final MachineModel model;
    private final double roomC;
    private final String currency;
    private final List<BuildFact> facts;
    private final Map<Set<String>, Attainable> attainables = new HashMap<>();
    private final List<FactSet> holding = new ArrayList<>();
    private final List<FactSet> failing = new ArrayList<>();
    private final ConflictSearch.Found found;

    BuildWhy(Breaches breaches, List<Stated> fitWishes, List<BuildWish> wishes, Halt halt) {
        this.fitCase = breaches.wished().asked();
        this.breaches = breaches;
        this.halt = halt;
        this.model = Sites.model(fitCase);
        this.roomC = fitCase.brief().limits().roomC();
        this.currency = fitCase.brief().terms().currency();
        this.facts = BuildFact.all(fitWishes, wishes, fitCase.brief());
        this.found = new ConflictSearch(facts.size(), this::canHold, this::isStopped).run();
    }

    private boolean isStopped() {
        return halt.because().isPresent();
    }

    /** Whether nothing can be missing. */
    public boolean isWhole() {
        return found.whole();
    }

    /** A build that keeps everything, if there is one. */
    public Optional<Build> had() {
        return found.whole() && found.conflicts().isEmpty() ? any(FactSet.upTo(facts.size())) : Optional.empty();
    }

    private List<BuildFact> of(FactSet set) {
        return set.numbers().stream().map(facts::get).toList();
    }

    private Attainable attainable(FactSet kept) {
        Set<String> texts = new TreeSet<>();
        for (BuildFact fact : of(kept)) {
            if (fact.limit().isEmpty() && fact.id().startsWith(WISH)) {
                texts.add(fact.id().substring(WISH.length()));
            }
        }
        Attainable known = attainables.get(texts);
        if (known == null) {
            Narrowed narrowed = Narrowed.of(breaches.wished(), texts);
            known = new Attainable(narrowed.fitCase(), narrowed.wish(), model, narrowed.layouts(), this::isStopped);
            attainables.put(texts, known);
        }
        return known;
    }

    private Attainable.Kept kept(FactSet set) {
        BuildLimits limits = BuildLimits.NONE;
        BriefLimits.HeatLimits heat = BriefLimits.HeatLimits.NONE;
        for (BuildFact fact : of(set)) {
            if (fact.limit().isPresent()) {
                BuildWish limit = fact.limit().get();
                limits = Figures.with(limits, limit.figure(), limit.most(), roomC);
            } else if (fact.id().equals(BuildFact.HEAT)) {
                heat = fitCase.brief().limits().heat().orElse(heat);
            }
        }
        return new Attainable.Kept(limits, heat);
    }

    /** Whether a build keeps these; what builds found before keep is not asked again, nor what a part cannot. */
    private boolean canHold(FactSet set) {
        if (holding.stream().anyMatch(set::isSubsetOf)) {
            return true;
        }
        if (failing.stream().anyMatch(f -> f.isSubsetOf(set))) {
            return false;
        }
        Optional<Build> build = any(set);
        if (build.isEmpty()) {
            failing.add(set);
        } else {
            holding.add(keptBy(build.get(), set));
        }
        return build.isPresent();
    }

    /** What a build keeps for sure that was looked for among these: they, and every limit that its figures are within. */
    private FactSet keptBy(Build build, FactSet asked) {
        FactSet out = asked;
        for (int i = 0; i < facts.size(); i++) {
            Optional<BuildWish> limit = facts.get(i).limit();
            if (limit.filter(l -> Figures.of(build, l.figure(), roomC) <= l.most())
                    .isPresent()) {
                out = out.with(i);
            }
        }
        return out;
    }

    private Optional<Build> any(FactSet set) {
        return attainable(set).any(kept(set));
    }

    private Optional<Build> best(Figure figure, FactSet set) {
        return isStopped() ? Optional.empty() : attainable(set).best(Figures.order(figure), kept(set));
    }

    /** What is missing where a conflict is about the coolant: the causes, the one that matters most first. */
    public record Told(Conflict conflict, List<Cause> causes) {
        /** Copies. */
        public Told {
            causes = List.copyOf(causes);
        }
    }

    /** The conflicts that have a limit in them, with their figures; those among wishes of what fits are told elsewhere. */
    public List<Told> conflicts() {
        List<Told> out = new ArrayList<>();
        for (FactSet conflict : found.conflicts()) {
            if (of(conflict).stream().anyMatch(f -> f.limit().isPresent() || f.id().equals(BuildFact.HEAT))) {
                out.add(out.size() < FIGURED_MAX ? figured(conflict) : new Told(plain(conflict), List.of()));
            }
        }
        return out;
    }

    private Conflict plain(FactSet conflict) {
        return new Conflict(
                of(conflict).stream().map(f -> Stated.of(f.id(), f.sentence())).toList());
    }

    private Told figured(FactSet conflict) {
        List<Stated> stated = new ArrayList<>();
        List<Cause> causes = new ArrayList<>();
        int telling = telling(conflict);
        for (int number : conflict.numbers()) {
            BuildFact fact = facts.get(number);
            Optional<Build> best = number == telling
                    ? fact.limit().flatMap(l -> best(l.figure(), conflict.without(number)))
                    : Optional.empty();
            if (best.isPresent() && fact.limit().isPresent()) {
                BuildWish limit = fact.limit().get();
                stated.add(figured(fact, limit, best.get()));
                if (limit.figure() == Figure.COOLANT && causes.isEmpty()) {
                    causes.addAll(Cause.of(model, best.get().machine()));
                }
            } else {
                stated.add(Stated.of(fact.id(), fact.sentence()));
            }
        }
        return new Told(new Conflict(stated), causes);
    }

    /** The fact of a conflict that is told with how near it can be had: the coolant, or else the first limit. */
    private int telling(FactSet conflict) {
        List<Integer> limits = conflict.numbers().stream()
                .filter(n -> facts.get(n).limit().isPresent())
                .toList();
        return limits.stream()
                .filter(n -> facts.get(n)
                        .limit()
                        .filter(l -> l.figure() == Figure.COOLANT)
                        .isPresent())
                .findFirst()
                .or(() -> limits.stream().findFirst())
                .orElse(-1);
    }

    private Stated figured(BuildFact fact, BuildWish limit, Build best) {
        double has = Figures.of(best, limit.figure(), roomC);
        double lack = Figures.amount(limit.figure(), has - limit.most());
        String unit = Figures.unit(limit.figure(), currency);
        return new Stated(
                fact.id(),
                fact.sentence() + "; the rest allows " + Figures.words(limit.figure(), has, currency) + " at best: "
                        + BuildWish.number(lack, 2) + " " + unit + " short",
                Optional.of(new Stated.Lack(lack, unit)));
    }

    /** What can be given up so that a build keeps the rest, smallest first, each with a build that does. */
    public List<Given> waysOut() {
        List<Given> out = new ArrayList<>();
        FactSet all = FactSet.upTo(facts.size());
        for (FactSet correction : found.corrections()) {
            if (!correction.isEmpty()) {
                FactSet rest = all.minus(correction);
                int telling = out.size() < FIGURED_MAX ? telling(correction) : -1;
                Optional<Build> build = Optional.of(telling)
                        .filter(t -> t >= 0)
                        .flatMap(t -> facts.get(t).limit())
                        .flatMap(l -> best(l.figure(), rest))
                        .or(() -> any(rest));
                build.ifPresent(b -> out.add(new Given(changes(correction, b), b)));
            }
        }
        return out;
    }

    /** What is given up, and a build that then keeps the rest. */
    public record Given(List<Stated> changes, Build build) {
        /** Copies. */
        public Given {
            changes = List.copyOf(changes);
        }
    }

    private List<Stated> changes(FactSet correction, Build build) {
        return correction.numbers().stream()
                .map(facts::get)
                .map(f -> f.limit()
                        .map(l -> eased(f, l, build))
                        .orElseGet(() -> Stated.of(
                                f.id(),
                                f.id().startsWith(WISH)
                                        ? "give up " + f.id().substring(WISH.length())
                                        : "lift the limits on components")))
                .toList();
    }

    private Stated eased(BuildFact fact, BuildWish limit, Build build) {
        double has = Figures.of(build, limit.figure(), roomC);
        double more = Figures.amount(limit.figure(), has - limit.most());
        String unit = Figures.unit(limit.figure(), currency);
        String whose = fact.id().startsWith(LIMIT) ? "the brief's limit" : limit.text();
        return new Stated(
                fact.id(),
                "accept " + Figures.words(limit.figure(), has, currency) + " for " + whose + ": "
                        + BuildWish.number(more, 2) + " " + unit + " more",
                Optional.of(new Stated.Lack(more, unit)));
    }
}
