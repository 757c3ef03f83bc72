package loopwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
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
    private final Kept kept;
    private final FactSet radiatorWishes;
    private final BooleanSupplier interrupted;

    /**
     * A walk.
     *
     * @param kept which facts have to be kept
     * @param radiatorWishes the wishes that stacks meet
     */
    KeptWalk(
            Attempts attempts, Attempts.Scenes scenes, Kept kept, FactSet radiatorWishes, BooleanSupplier interrupted) {
        this.attempts = attempts;
        this.scenes = scenes;
        this.kept = kept;
        this.radiatorWishes = radiatorWishes;
        this.interrupted = interrupted;
    }

    /**
     * Which facts and wishes are kept: those of a set, or all but those of a set.
     *
     * @param all whether it is all but those
     */
    record Kept(FactSet set, boolean all) {

        /** Whether one of these is kept. */
        boolean has(FactSet facts) {
            return all ? !facts.isSubsetOf(set) : facts.meets(set);
        }

        boolean has(int fact) {
            return set.has(fact) != all;
        }
    }

    private boolean breaks(FactSet facts) {
        return kept.has(facts);
    }

    /** The first candidate that keeps them; empty when there is none, or when it was interrupted. */
    Optional<Candidate> find() {
        for (Group group : attempts.groups()) {
            Optional<Smallest.Kept<ModSet>> mods =
                    group.sets().stream().filter(s -> !breaks(s.set())).findFirst();
            if (mods.isPresent()) {
                List<List<HangFacts.Option>> options = options(group);
                boolean hopeless = breaks(radiatorWishes.minus(met(options)));
                for (PlacedFacts.Placed placed : hopeless ? List.<PlacedFacts.Placed>of() : scenes.placed(group)) {
                    if (interrupted.getAsBoolean()) {
                        return Optional.empty();
                    }
                    Scene scene = new Scene(placed, options);
                    if (!breaks(placed.facts())) {
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

    /** The stacks that break nothing kept by themselves. */
    private List<List<HangFacts.Option>> options(Group group) {
        List<List<HangFacts.Option>> out = new ArrayList<>();
        for (List<HangFacts.Option> mount : scenes.options(group)) {
            out.add(mount.stream().filter(o -> !breaks(o.facts())).toList());
        }
        return out;
    }

    private static FactSet met(List<List<HangFacts.Option>> options) {
        FactSet out = FactSet.NONE;
        for (List<HangFacts.Option> mount : options) {
            for (HangFacts.Option option : mount) {
                out = out.or(option.meets());
            }
        }
        return out;
    }

    private record Way(Group group, Scene scene, Smallest.Kept<ModSet> mods, List<HangFacts.Option> stacks) {}

    private Optional<Candidate> extend(Way way, FactSet met, List<Open> open, int frame) {
        if (frame == way.scene().options().size()) {
            return settle(way, met, open);
        }
        for (HangFacts.Option option : way.scene().options().get(frame)) {
            if (option.meets().isSubsetOf(met)) {
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
        open.stream().filter(o -> kept.has(o.fact())).forEach(o -> sides.addAll(o.sides()));
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
