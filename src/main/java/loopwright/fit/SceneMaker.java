package loopwright.fit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntBinaryOperator;
import java.util.function.IntUnaryOperator;
import java.util.stream.Stream;
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
    private final Map<Stage, List<Setting>> settingsOf = new HashMap<>();
    private final Map<Wall, List<Option>> optionsOf = new HashMap<>();
    private final Map<String, List<Seated>> seatedByMods = new HashMap<>();
    private final Map<String, Hang> hangs = new HashMap<>();
    private final Map<String, Body> stackBodies = new HashMap<>();

    SceneMaker(FitCase fitCase, List<PartSet> sets) {
        this.fitCase = fitCase;
        this.sets = sets;
        this.bodies = new Bodies(fitCase);
        this.pairs = new PairTable(bodies, fitCase.frames().size(), fitCase.strictness());
    }

    List<PartSet> partSets() {
        return sets;
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

    /** What does not hang on mounts: it is the same for many mod sets. */
    private record Stage(List<Integer> builtIn, long usable, Knowledge knowledge) {}

    /** What a mount can carry depends on these alone. */
    private record Wall(int mount, ModSet aboutMount, Stage stage) {}

    Scene scene(ModWorld world, Knowledge knowledge) {
        Stage stage = stage(world, knowledge);
        List<Setting> settings = settings(stage);
        List<List<Option>> options = new ArrayList<>();
        for (MountFrame frame : fitCase.frames()) {
            options.add(options(frame, world.mods(), stage));
        }
        return new Scene(world.mods(), stage.builtIn(), settings, List.copyOf(options));
    }

    private Stage stage(ModWorld world, Knowledge knowledge) {
        return new Stage(bodies.builtIn(world.mods()), world.usable(), knowledge);
    }

    /** What a mount could carry with other mods about it, everything else as in a world. */
    List<Option> options(MountFrame frame, ModSet otherMods, ModWorld world, Knowledge knowledge) {
        return options(frame, otherMods, stage(world, knowledge));
    }

    private List<Option> options(MountFrame frame, ModSet mods, Stage stage) {
        ModSet about =
                mods.and(ModRules.aboutMount(fitCase.chassis(), frame.mount().id()));
        return optionsOf.computeIfAbsent(new Wall(frame.index(), about, stage), w -> makeOptions(frame, about, stage));
    }

    private List<Setting> settings(Stage stage) {
        return settingsOf.computeIfAbsent(stage, this::makeSettings);
    }

    /** Every placing of the parts in a world with its plain margin, those that clash in themselves too. */
    List<Setting> placed(ModWorld world) {
        return makeSettings(stage(world, Knowledge.KNOWN_ONLY), pairs::plainMargin, pairs::plainWallMargin);
    }

    private List<Setting> makeSettings(Stage stage) {
        return makeSettings(stage, pairs::margin, pairs::wallMargin);
    }

    private List<Setting> makeSettings(Stage stage, IntBinaryOperator pairMargin, IntUnaryOperator wallMargin) {
        boolean knownOnly = stage.knowledge() == Knowledge.KNOWN_ONLY;
        if (knownOnly && stage.builtIn().stream().anyMatch(b -> bodies.get(b).isUnknown())) {
            return List.of();
        }
        List<Placing> all = placings.computeIfAbsent(stage.usable(), u -> new PlaceModel(fitCase, sets).all(u));
        List<Setting> out = new ArrayList<>();
        for (Placing placing : all) {
            PartSet set = sets.get(placing.parts());
            List<Integer> parts = bodies.parts(set, placing);
            if (!knownOnly || parts.stream().noneMatch(p -> bodies.get(p).isUnknown())) {
                int margin = margin(parts, stage.builtIn(), pairMargin, wallMargin);
                if (margin != PairTable.REFUSED) {
                    out.add(new Setting(set, placing, parts, margin));
                }
            }
        }
        return List.copyOf(out);
    }

    private static int margin(
            List<Integer> parts, List<Integer> builtIn, IntBinaryOperator pairMargin, IntUnaryOperator wallMargin) {
        int least = PairTable.NO_LIMIT;
        for (int i = 0; i < parts.size() && least != PairTable.REFUSED; i++) {
            least = Math.min(least, wallMargin.applyAsInt(parts.get(i)));
            for (int other : builtIn) {
                least = Math.min(least, pairMargin.applyAsInt(parts.get(i), other));
            }
            for (int j = i + 1; j < parts.size(); j++) {
                least = Math.min(least, pairMargin.applyAsInt(parts.get(i), parts.get(j)));
            }
        }
        return least;
    }

    private List<Option> makeOptions(MountFrame frame, ModSet about, Stage stage) {
        List<Setting> settings = settings(stage);
        List<Option> out = new ArrayList<>();
        Map<Integer, BitSet> settingsWith = settingsWith(settings);
        for (Seated seated : seated(frame, about)) {
            List<Hung> hung = new ArrayList<>();
            for (Hang hang : seated.hangs()) {
                if (stage.knowledge() == Knowledge.UNKNOWN_AS_ZERO
                        || !hang.occupant().isUnknown()) {
                    addIfPossible(hung, hang, stage.builtIn());
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

    /** A shape's hangs on a mount in every range that seats and covers allow with the mods about that mount. */
    List<Hang> hangs(MountFrame frame, Shape shape, ModSet about) {
        return fitCase.seating().ranges(frame, shape, about).stream()
                .map(range -> hang(frame, shape, range))
                .toList();
    }

    private List<Seated> seated(MountFrame frame, ModSet about) {
        return seatedByMods.computeIfAbsent(frame.mount().id() + about, k -> {
            List<Seated> out = new ArrayList<>();
            List<Shape> shapes = fitCase.shapes().all();
            for (int s = 0; s < shapes.size(); s++) {
                Shape shape = shapes.get(s);
                if (fitCase.seating().hindrance(frame, shape, about) == Seating.Hindrance.NONE) {
                    out.add(new Seated(s, hangs(frame, shape, about)));
                }
            }
            return List.copyOf(out);
        });
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
                where, w -> new StackBodies(frame, shape, fitCase.catalog().practice()).body());
        Occupant occupant = Occupant.of(
                body,
                Occupant.Group.STACK,
                Set.of(frame.panel().face()),
                Set.copyOf(frame.mount().touches()));
        StackNames names = StackNames.of(frame, shape);
        List<String> unknowns = Stream.of(occupant.unknowns(), range.unknowns(), names.unknowns())
                .flatMap(List::stream)
                .map(names::toMeasure)
                .distinct()
                .toList();
        Hang made = new Hang(hangs.size(), frame, shape, range, occupant.withUnknowns(unknowns));
        hangs.put(where + range, made);
        return made;
    }
}
