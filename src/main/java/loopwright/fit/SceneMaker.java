package loopwright.fit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import loopwright.catalog.chassis.Mod;
import loopwright.fit.ModModel.ModWorld;
import loopwright.fit.PairTable.Link;
import loopwright.fit.PairTable.Status;
import loopwright.fit.PlaceModel.Placing;
import loopwright.fit.Scene.Hung;
import loopwright.fit.Scene.Option;
import loopwright.fit.Scene.Setting;
import loopwright.geometry.Body;

/** Makes the scene of a mod set; bodies, hangs, placings and pairs are made once and shared by all scenes. */
final class SceneMaker {

    /** Whether bodies with unknown dimensions may take part, at zero. */
    enum Knowledge {
        /** Only what is known. */
        KNOWN_ONLY,
        /** Unknown dimensions count as zero. */
        UNKNOWN_AS_ZERO
    }

    private final FitCase fitCase;
    private final List<PartSet> sets;
    private final Bodies bodies;
    private final PairTable pairs;
    private final Map<Long, List<Placing>> placings = new HashMap<>();
    private final Map<String, List<Seated>> seatedByMods = new HashMap<>();
    private final Map<String, Hang> hangs = new HashMap<>();
    private final Map<String, Body> stackBodies = new HashMap<>();

    SceneMaker(FitCase fitCase, List<PartSet> sets) {
        this.fitCase = fitCase;
        this.sets = sets;
        this.bodies = new Bodies(fitCase);
        this.pairs = new PairTable(bodies, fitCase.frames().size());
    }

    PairTable pairs() {
        return pairs;
    }

    Bodies bodies() {
        return bodies;
    }

    /** Whether anything with an unknown dimension has come up so far. */
    boolean sawUnknown() {
        return bodies.anyUnknown()
                || hangs.values().stream().anyMatch(h -> h.occupant().isUnknown());
    }

    Scene scene(ModWorld world, Knowledge knowledge) {
        List<Integer> builtIn = bodies.builtIn(world.mods());
        if (knowledge == Knowledge.KNOWN_ONLY
                && builtIn.stream().anyMatch(b -> bodies.get(b).isUnknown())) {
            return new Scene(world.mods(), builtIn, List.of(), List.of());
        }
        List<Setting> settings = settings(world, builtIn, knowledge);
        List<List<Option>> options = new ArrayList<>();
        for (MountFrame frame : fitCase.frames()) {
            options.add(options(frame, world.mods(), builtIn, settings, knowledge));
        }
        return new Scene(world.mods(), builtIn, settings, List.copyOf(options));
    }

    private List<Setting> settings(ModWorld world, List<Integer> builtIn, Knowledge knowledge) {
        List<Placing> all = placings.computeIfAbsent(world.usable(), u -> new PlaceModel(fitCase, sets).all(u));
        List<Setting> out = new ArrayList<>();
        for (Placing placing : all) {
            PartSet set = sets.get(placing.parts());
            List<Integer> parts = bodies.parts(set, placing);
            boolean known = parts.stream().noneMatch(p -> bodies.get(p).isUnknown());
            if (known || knowledge == Knowledge.UNKNOWN_AS_ZERO) {
                int margin = margin(parts, builtIn);
                if (margin >= 0) {
                    out.add(new Setting(set, placing, parts, margin));
                }
            }
        }
        return List.copyOf(out);
    }

    private int margin(List<Integer> parts, List<Integer> builtIn) {
        int least = PairTable.NO_LIMIT;
        for (int i = 0; i < parts.size() && least >= 0; i++) {
            least = Math.min(least, pairs.wallMargin(parts.get(i)));
            for (int other : builtIn) {
                least = Math.min(least, pairs.margin(parts.get(i), other));
            }
            for (int j = i + 1; j < parts.size(); j++) {
                least = Math.min(least, pairs.margin(parts.get(i), parts.get(j)));
            }
        }
        return least;
    }

    private List<Option> options(
            MountFrame frame, ModSet mods, List<Integer> builtIn, List<Setting> settings, Knowledge knowledge) {
        List<Option> out = new ArrayList<>();
        Map<Integer, BitSet> settingsWith = settingsWith(settings);
        for (Seated seated : seated(frame, mods)) {
            List<Hung> hung = new ArrayList<>();
            for (Hang hang : seated.hangs()) {
                if (knowledge == Knowledge.UNKNOWN_AS_ZERO || !hang.occupant().isUnknown()) {
                    addIfPossible(hung, hang, builtIn);
                }
            }
            BitSet goesWith = goesWith(hung, settings.size(), settingsWith);
            if (!goesWith.isEmpty()) {
                out.add(new Option(
                        frame.index(),
                        seated.shape(),
                        List.copyOf(hung),
                        goesWith,
                        free(hung, settings.size(), settingsWith)));
            }
        }
        return List.copyOf(out);
    }

    /** A shape, by its index, and its hangs in every range that seats and covers allow. */
    private record Seated(int shape, List<Hang> hangs) {}

    private List<Seated> seated(MountFrame frame, ModSet mods) {
        ModSet relevant = mods.and(aboutMount(frame));
        return seatedByMods.computeIfAbsent(frame.mount().id() + relevant, k -> {
            List<Seated> out = new ArrayList<>();
            List<Shape> shapes = fitCase.shapes().all();
            for (int s = 0; s < shapes.size(); s++) {
                Shape shape = shapes.get(s);
                if (fitCase.seating().hindrance(frame, shape, relevant) == Seating.Hindrance.NONE) {
                    out.add(new Seated(
                            s,
                            fitCase.seating().ranges(frame, shape, relevant).stream()
                                    .map(range -> hang(frame, shape, range))
                                    .toList()));
                }
            }
            return List.copyOf(out);
        });
    }

    /** The mods that change what can hang on a mount. */
    private ModSet aboutMount(MountFrame frame) {
        long bits = 0;
        String id = frame.mount().id();
        for (int i = 0; i < fitCase.chassis().mods().size(); i++) {
            Mod.Effect effect = fitCase.chassis().mods().get(i).effect();
            boolean about = effect.seats().stream().anyMatch(e -> e.mount().equals(id))
                    || effect.covers().stream().anyMatch(e -> e.mount().equals(id))
                    || effect.airways().stream().anyMatch(e -> e.mount().equals(id));
            bits |= about ? 1L << i : 0;
        }
        return new ModSet(bits);
    }

    private void addIfPossible(List<Hung> hung, Hang hang, List<Integer> builtIn) {
        Link walls = pairs.walls(hang);
        if (walls.status() == Status.NEVER) {
            return;
        }
        List<int[]> open = new ArrayList<>(walls.open());
        for (int body : builtIn) {
            Link link = pairs.link(hang, body);
            if (link.status() == Status.NEVER) {
                return;
            }
            open.addAll(link.open());
        }
        if (open.isEmpty() || new Positions(pairs.domains(List.of(hang)), open).feasible(0)) {
            hung.add(new Hung(hang, List.copyOf(open)));
        }
    }

    private static Map<Integer, BitSet> settingsWith(List<Setting> settings) {
        Map<Integer, BitSet> out = new HashMap<>();
        for (int i = 0; i < settings.size(); i++) {
            for (int body : settings.get(i).bodies()) {
                out.computeIfAbsent(body, b -> new BitSet()).set(i);
            }
        }
        return out;
    }

    private BitSet goesWith(List<Hung> hung, int settings, Map<Integer, BitSet> settingsWith) {
        BitSet out = new BitSet(settings);
        for (Hung one : hung) {
            BitSet free = new BitSet(settings);
            free.set(0, settings);
            settingsWith.forEach((body, with) -> {
                if (pairs.link(one.hang(), body).status() == Status.NEVER) {
                    free.andNot(with);
                }
            });
            out.or(free);
        }
        return out;
    }

    private BitSet free(List<Hung> hung, int settings, Map<Integer, BitSet> settingsWith) {
        BitSet out = new BitSet(settings);
        if (hung.size() == 1 && hung.get(0).open().isEmpty()) {
            out.set(0, settings);
            settingsWith.forEach((body, with) -> {
                if (pairs.link(hung.get(0).hang(), body).status() != Status.ALWAYS) {
                    out.andNot(with);
                }
            });
        }
        return out;
    }

    private Hang hang(MountFrame frame, Shape shape, Range range) {
        String where = frame.index() + " " + shape.text();
        Hang known = hangs.get(where + range);
        if (known != null) {
            return known;
        }
        Body body = stackBodies.computeIfAbsent(
                where, w -> new StackBodies(frame, fitCase.catalog().practice()).body(shape));
        Occupant occupant = Occupant.of(
                body,
                Occupant.Group.STACK,
                Set.of(frame.panel().face()),
                Set.copyOf(frame.mount().touches()));
        List<String> unknowns = new ArrayList<>(occupant.unknowns());
        unknowns.addAll(range.unknowns());
        Hang made = new Hang(hangs.size(), frame, shape, range, occupant.withUnknowns(List.copyOf(unknowns)));
        hangs.put(where + range, made);
        return made;
    }
}
