package loopwright.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import loopwright.fit.ModModel.ModWorld;
import loopwright.fit.PlacedFacts.Placed;
import loopwright.fit.conflict.FactSet;
import loopwright.fit.conflict.Smallest;

/**
 * What candidates for wishes are made of: groups of mod sets that come to the same, with the placings and the stacks that go with each.
 *
 * <p>Made once for all questions about the wishes.
 */
final class Attempts {

    /** Most mods whose sets are all looked at. */
    private static final int MODS_MAX = 16;

    private final WishedCase wished;
    private final FactBook book;
    private final SceneMaker maker;
    private final HangFacts hangs;
    private final List<MountFrame> frames;
    private final List<Group> groups;
    private final boolean whole;
    private final Map<Beyond, Scenes> scenes = new HashMap<>();

    Attempts(WishedCase wished, FactBook book, BooleanSupplier interrupted) {
        this.wished = wished;
        this.book = book;
        this.maker = new SceneMaker(wished.widened(), List.of());
        this.hangs = new HangFacts(wished, book, maker);
        this.frames = wished.frames();
        ModSet mods = wished.mods();
        this.groups = groups(mods.size() > MODS_MAX ? fewer(mods) : mods, interrupted);
        this.whole = mods.size() <= MODS_MAX && !interrupted.getAsBoolean();
    }

    /** The first mods of too many. */
    private static ModSet fewer(ModSet mods) {
        long bits = mods.bits();
        while (Long.bitCount(bits) > MODS_MAX) {
            bits &= ~Long.highestOneBit(bits);
        }
        return new ModSet(bits);
    }

    /** Mod sets that leave the same bodies, places and mounts. */
    private record Same(List<Integer> builtIn, long usable, ModSet about) {}

    /**
     * A group of mod sets.
     *
     * @param sets those that break least, with what they break
     */
    record Group(List<Integer> builtIn, long usable, ModSet about, List<Smallest.Kept<ModSet>> sets) {}

    /** A placing in a group, and for each mount the stacks with what they break beside its parts. */
    record Scene(Placed placed, List<List<HangFacts.Option>> options) {}

    private List<Group> groups(ModSet considered, BooleanSupplier interrupted) {
        ModFacts facts = new ModFacts(wished, book);
        long about = 0;
        for (MountFrame frame : frames) {
            about |= ModRules.aboutMount(wished.asked().chassis(), frame.mount().id())
                    .bits();
        }
        List<ModWorld> worlds =
                new ArrayList<>(new ModModel(wished.asked().chassis(), List.of(), considered).all(interrupted));
        worlds.sort((a, b) -> ModRules.gentlestFirst(wished.asked().chassis()).compare(a.mods(), b.mods()));
        Map<Same, Smallest<ModSet>> same = new LinkedHashMap<>();
        for (ModWorld world : worlds) {
            Same key = new Same(
                    maker.bodies().builtIn(world.mods()),
                    world.usable(),
                    world.mods().and(new ModSet(about)));
            same.computeIfAbsent(key, k -> new Smallest<>()).offer(facts.broken(world.mods()), world.mods());
        }
        List<Group> out = new ArrayList<>();
        same.forEach((key, sets) -> out.add(new Group(key.builtIn(), key.usable(), key.about(), sets.all())));
        return List.copyOf(out);
    }

    /** The groups, the gentlest first. */
    List<Group> groups() {
        return groups;
    }

    /** Whether every candidate is among them. */
    boolean isWhole() {
        return whole;
    }

    SceneMaker maker() {
        return maker;
    }

    /** The scenes of all groups, with the brief's own parts and some beyond. */
    Scenes scenes(Beyond beyond) {
        Scenes known = scenes.get(beyond);
        if (known == null) {
            known = makeScenes(beyond);
            scenes.put(beyond, known);
        }
        return known;
    }

    private Scenes makeScenes(Beyond beyond) {
        PartFacts parts = new PartFacts(wished, book, beyond.roles());
        Set<Hang> all = allHangs(beyond);
        Map<Integer, Boolean> near = new HashMap<>();
        PlacedFacts placed = new PlacedFacts(
                wished, book, maker, parts.all(), body -> near.computeIfAbsent(body, b -> isNear(b, all)));
        return new Scenes(this, beyond, placed, parts.isWhole());
    }

    /** Scenes, group by group. */
    record Scenes(Attempts attempts, Beyond beyond, PlacedFacts placed, boolean whole) {

        /** What may hang on each wished mount. */
        List<List<HangFacts.Option>> options(Group group) {
            List<List<HangFacts.Option>> out = new ArrayList<>();
            for (MountFrame frame : attempts.frames) {
                out.add(attempts.hangs.options(frame, group, beyond));
            }
            return out;
        }

        /** The placings of a group. */
        List<PlacedFacts.Placed> placed(Group group) {
            return placed.of(group.builtIn(), group.usable());
        }
    }

    /** Every stack that some mod set lets hang. */
    private Set<Hang> allHangs(Beyond beyond) {
        Set<Hang> out = new LinkedHashSet<>();
        for (Group group : groups) {
            for (MountFrame frame : frames) {
                hangs.options(frame, group, beyond).forEach(o -> o.hang().ifPresent(out::add));
            }
        }
        return out;
    }

    private boolean isNear(int body, Set<Hang> all) {
        return all.stream().anyMatch(h -> maker.pairs().link(h, body).status() != PairTable.Status.ALWAYS);
    }

    /** A stack among the parts of a placing: what it breaks now, and what is left to positions. */
    HangFacts.Option among(HangFacts.Option option, Placed parts) {
        if (option.hang().isEmpty()) {
            return option;
        }
        Hang hang = option.hang().get();
        FactSet facts = option.facts();
        List<HangFacts.Open> open = new ArrayList<>(option.open());
        for (int body : parts.bodies()) {
            facts = HangFacts.add(
                    maker.pairs().link(hang, body), () -> book.clear(hang, maker.bodies(), body), facts, open);
        }
        return new HangFacts.Option(option.mount(), option.shape(), option.hang(), option.meets(), facts, open);
    }

    /** What two stacks break between them. */
    FactSet between(Hang one, Hang other, List<HangFacts.Open> open) {
        String a = one.occupant().body().id();
        String b = other.occupant().body().id();
        return HangFacts.add(maker.pairs().link(one, other), () -> book.clear(a, b), FactSet.NONE, open);
    }

    WishedCase wished() {
        return wished;
    }

    FactBook book() {
        return book;
    }
}
