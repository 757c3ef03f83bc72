package loopwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.IntPredicate;
import loopwright.fit.Attempts.Group;
import loopwright.fit.Attempts.Scene;
import loopwright.fit.HangFacts.Open;
import loopwright.fit.conflict.FactSet;
import loopwright.fit.conflict.Smallest;

/**
 * Looks for one candidate that keeps given facts and wishes, whatever else it breaks. It knows nothing of corrections: what they say
 * is asked again here.
 */
final class KeptWalk {

    private final Attempts attempts;
    private final Attempts.Scenes scenes;
    private final IntPredicate kept;
    private final FactSet radiatorWishes;
    private final BooleanSupplier interrupted;

    /**
     * A walk.
     *
     * @param kept which facts have to be kept
     * @param radiatorWishes the wishes that stacks meet
     */
    KeptWalk(
            Attempts attempts,
            Attempts.Scenes scenes,
            IntPredicate kept,
            FactSet radiatorWishes,
            BooleanSupplier interrupted) {
        this.attempts = attempts;
        this.scenes = scenes;
        this.kept = kept;
        this.radiatorWishes = radiatorWishes;
        this.interrupted = interrupted;
    }

    private boolean breaks(FactSet facts) {
        return facts.numbers().stream().anyMatch(kept::test);
    }

    /** The first candidate that keeps them; empty when there is none, or when it was interrupted. */
    Optional<Candidate> find() {
        for (Group group : attempts.groups()) {
            Optional<Smallest.Kept<ModSet>> mods =
                    group.sets().stream().filter(s -> !breaks(s.set())).findFirst();
            if (mods.isPresent()) {
                for (Scene scene : scenes.of(group)) {
                    if (interrupted.getAsBoolean()) {
                        return Optional.empty();
                    }
                    if (!breaks(scene.placed().facts())) {
                        Optional<Candidate> found =
                                extend(new Way(group, scene, mods.get(), List.of()), FactSet.NONE, List.of(), 0);
                        if (found.isPresent()) {
                            return found;
                        }
                    }
                }
            }
        }
        return Optional.empty();
    }

    private record Way(Group group, Scene scene, Smallest.Kept<ModSet> mods, List<HangFacts.Option> stacks) {}

    private Optional<Candidate> extend(Way way, FactSet met, List<Open> open, int frame) {
        if (frame == way.scene().options().size()) {
            return settle(way, met, open);
        }
        for (HangFacts.Option option : way.scene().options().get(frame)) {
            if (option.meets().minus(met).isEmpty() || breaks(option.facts())) {
                continue;
            }
            HangFacts.Option here = attempts.among(option, way.scene().placed());
            List<Open> more = new ArrayList<>(open);
            more.addAll(here.open());
            if (!breaks(here.facts()) && !breaks(between(way.stacks(), here, more))) {
                List<HangFacts.Option> stacks = new ArrayList<>(way.stacks());
                stacks.add(here);
                Optional<Candidate> found = extend(
                        new Way(way.group(), way.scene(), way.mods(), List.copyOf(stacks)),
                        met.or(here.meets()),
                        more,
                        frame + 1);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return extend(way, met, open, frame + 1);
    }

    private FactSet between(List<HangFacts.Option> stacks, HangFacts.Option here, List<Open> open) {
        FactSet out = FactSet.NONE;
        for (HangFacts.Option other : stacks) {
            if (other.hang().isPresent() && here.hang().isPresent()) {
                out = out.or(attempts.between(other.hang().get(), here.hang().get(), open));
            }
        }
        return out;
    }

    private Optional<Candidate> settle(Way way, FactSet met, List<Open> open) {
        FactSet unmet = radiatorWishes.minus(met);
        if (breaks(unmet)) {
            return Optional.empty();
        }
        List<int[]> sides = new ArrayList<>();
        open.stream().filter(o -> kept.test(o.fact())).forEach(o -> sides.addAll(o.sides()));
        Candidate candidate = new Candidate(
                way.mods().set().or(way.scene().placed().facts()).or(unmet),
                way.mods().with(),
                way.group().builtIn(),
                way.scene().placed(),
                way.stacks());
        boolean stands = sides.isEmpty()
                || new Positions(attempts.maker().pairs().domains(candidate.hangs()), sides).feasible(0);
        return stands ? Optional.of(candidate) : Optional.empty();
    }
}
