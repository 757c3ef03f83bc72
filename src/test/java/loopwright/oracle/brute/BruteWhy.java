package loopwright.oracle.brute;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import loopwright.catalog.basis.Face;
import loopwright.catalog.brief.BriefLimits;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.Place;
import loopwright.catalog.chassis.Shell;
import loopwright.oracle.OracleCase;

/**
 * What has to be given up for wishes, by trying every candidate of why.md: every set of the mods that are looked at, every choice with
 * every placing, every shape at every hundredth of its ranges. Only what breaks all that another one breaks is not gone into further.
 */
public final class BruteWhy {
    private final OracleCase question;
    private final List<WhyWish> wishes;
    private final WhyFault fault;
    private final int[] insideHmm;
    private final WhyFacts facts = new WhyFacts();
    private final WhyChoices choices;
    private final WhyBodies bodies;
    private final WhyStacks stacks;
    private Broken radiatorWishes = Broken.NOTHING;

    /** Sets it up; without wishes the wish is a radiator of the brief on some mount. */
    public BruteWhy(OracleCase question, List<WhyWish> wishes, WhyFault fault) {
        this.question = question;
        this.wishes = wishes;
        this.fault = fault;
        Shell.Interior interior = question.chassis().shell().interior();
        this.insideHmm = new int[] {
            interior.widthMm().valueHmm(),
            interior.depthMm().valueHmm(),
            interior.heightMm().valueHmm()
        };
        this.choices = new WhyChoices(question, wishes, facts, fault);
        this.bodies = new WhyBodies(question, insideHmm, facts, fault);
        this.stacks = new WhyStacks(question, wishes, insideHmm, facts, fault);
        for (WhyWish wish : wishes) {
            if (wish instanceof WhyWish.RadiatorOn) {
                radiatorWishes = radiatorWishes.or(facts.fact(wish.fact()));
            }
        }
    }

    /** Mods, parts and bodies alike in all that stacks can meet; what these break, the smallest sets. */
    private record Scene(
            List<List<WhyStacks.Option>> options,
            List<WhyBodies.Named> near,
            WhyFacts least,
            IdentityHashMap<WhyStacks.Option, List<Broken>> alone) {
        Scene(List<List<WhyStacks.Option>> options, List<WhyBodies.Named> near) {
            this(options, near, new WhyFacts(), new IdentityHashMap<>());
        }
    }

    /** The corrections, as ids of facts. */
    public Set<SortedSet<String>> corrections() {
        for (List<Mod> mods : modSets()) {
            for (Scene scene : scenes(mods)) {
                hang(new Walk(scene, List.of()), 0, Broken.NOTHING, Broken.NOTHING);
            }
        }
        Set<SortedSet<String>> out = new TreeSet<>(Comparator.comparing(Object::toString));
        facts.kept().forEach(b -> out.add(facts.ids(b)));
        return out;
    }

    /** Every set of the mods that are looked at, small ones first. */
    private List<List<Mod>> modSets() {
        List<Mod> all = question.chassis().mods();
        Set<String> looked = new TreeSet<>();
        List<Mount> mounts = stacks.mounts();
        for (Mod mod : all) {
            Mod.Effect e = mod.effect();
            boolean makesRoom = !e.removes().isEmpty() || !e.opensPlaces().isEmpty();
            boolean wished = wishes.stream().anyMatch(w -> names(w, mod.id()));
            if (makesRoom || wished || mounts.stream().anyMatch(m -> WhyStacks.isAbout(mod, m.id()))) {
                looked.add(mod.id());
            }
        }
        for (int i = 0; i < all.size(); i++) {
            for (Mod mod : all) {
                if (looked.contains(mod.id())) {
                    looked.addAll(mod.rules().requires());
                }
            }
        }
        List<Mod> mods = all.stream().filter(m -> looked.contains(m.id())).toList();
        List<List<Mod>> out = new ArrayList<>();
        for (int bits = 0; bits < 1 << mods.size(); bits++) {
            List<Mod> set = new ArrayList<>();
            for (int i = 0; i < mods.size(); i++) {
                if ((bits >> i & 1) == 1) {
                    set.add(mods.get(i));
                }
            }
            out.add(set);
        }
        out.sort(Comparator.comparingInt(List::size));
        return out;
    }

    private static boolean names(WhyWish wish, String mod) {
        return wish instanceof WhyWish.With w
                ? w.mod().equals(mod)
                : wish instanceof WhyWish.Without n && n.mod().equals(mod);
    }

    private Broken broken(List<Mod> mods) {
        Set<String> ids = new TreeSet<>();
        mods.forEach(m -> ids.add(m.id()));
        Broken out = Broken.NOTHING;
        int visible = 0;
        int cuts = 0;
        BriefLimits.ModLimits limits = question.brief().limits().mods();
        for (Mod mod : mods) {
            if (limits.forbid().contains(mod.id()) && fault != WhyFault.FORBIDDEN_IGNORED) {
                out = out.or(facts.fact("forbidden:" + mod.id()));
            }
            for (String other : mod.rules().requires()) {
                out = ids.contains(other) ? out : out.or(facts.fact("needs:" + mod.id() + ":" + other));
            }
            for (String other : mod.rules().excludes()) {
                if (ids.contains(other)) {
                    String one = mod.id().compareTo(other) < 0 ? mod.id() : other;
                    out = out.or(facts.fact("excludes:" + one + ":" + (one.equals(other) ? mod.id() : other)));
                }
            }
            visible += mod.look().visibleCuts();
            cuts += mod.look().visibleCuts() + mod.look().hiddenCuts();
        }
        out = visible > limits.visibleCutsMax().orElse(Integer.MAX_VALUE) ? out.or(facts.fact("visible-cuts")) : out;
        out = cuts > limits.cutsMax().orElse(Integer.MAX_VALUE) ? out.or(facts.fact("cuts")) : out;
        for (WhyWish wish : wishes) {
            boolean missing = wish instanceof WhyWish.With w && !ids.contains(w.mod());
            boolean unwanted = wish instanceof WhyWish.Without n && ids.contains(n.mod());
            if (missing || unwanted) {
                out = out.or(facts.fact(wish.fact()));
            }
        }
        return out;
    }

    private List<Scene> scenes(List<Mod> mods) {
        List<List<WhyStacks.Option>> options = new ArrayList<>();
        stacks.mounts().forEach(m -> options.add(stacks.on(m, mods)));
        List<WhyBodies.Named> builtIn = bodies.ofChassis(mods);
        Broken ofMods = broken(mods);
        Map<List<WhyBodies.Named>, Scene> out = new LinkedHashMap<>();
        Map<WhyBodies.Named, Boolean> near = new HashMap<>();
        for (WhyChoices.Filled filled : choices.all()) {
            for (WhyBodies.Placed placed : bodies.placings(filled, choices.placedDrives(), usable(mods))) {
                List<WhyBodies.Named> all = new ArrayList<>(builtIn);
                all.addAll(placed.bodies());
                Broken broken = ofMods.or(filled.broken()).or(placed.broken()).or(bodies.broken(all));
                List<WhyBodies.Named> nearOnes = all.stream()
                        .filter(b -> near.computeIfAbsent(
                                b,
                                n -> options.stream()
                                        .flatMap(List::stream)
                                        .anyMatch(o -> !o.clashes(n).isEmpty())))
                        .toList();
                out.computeIfAbsent(nearOnes, n -> new Scene(options, n))
                        .least()
                        .offer(broken);
            }
        }
        return List.copyOf(out.values());
    }

    private List<Place> usable(List<Mod> mods) {
        Set<String> ids = new TreeSet<>();
        mods.forEach(m -> ids.add(m.id()));
        return question.chassis().inside().places().stream()
                .filter(p -> BruteChoices.usable(question.chassis(), p, ids))
                .toList();
    }

    /** Stacks at positions so far. */
    private record Walk(Scene scene, List<Standing> standing) {
        Walk with(WhyStacks.Option option, int position) {
            if (option.bodies.isEmpty()) {
                return this;
            }
            List<Standing> more = new ArrayList<>(standing);
            more.add(new Standing(option.id(), option.bodies.get(position)));
            return new Walk(scene, more);
        }
    }

    /** A stack where it stands. */
    private record Standing(String id, BruteBody body) {}

    private boolean isHopeless(Scene scene, Broken broken) {
        for (Broken one : scene.least().kept()) {
            if (!facts.covers(one.or(broken))) {
                return false;
            }
        }
        return true;
    }

    private void hang(Walk walk, int mount, Broken broken, Broken met) {
        Scene scene = walk.scene();
        if (isHopeless(scene, broken)) {
            return;
        }
        if (mount == scene.options().size()) {
            Broken all = broken.or(radiatorWishes.without(met));
            scene.least().kept().forEach(b -> facts.offer(b.or(all)));
            return;
        }
        for (WhyStacks.Option option : scene.options().get(mount)) {
            // A stack that meets no wish that is not met yet only breaks more than nothing there.
            if (!option.meets.isWithin(met)) {
                List<Broken> alone = alone(scene, option);
                for (int i = 0; i < alone.size(); i++) {
                    Broken here = broken.or(alone.get(i));
                    if (!isHopeless(scene, here)) {
                        Walk more = walk.with(option, i);
                        hang(more, mount + 1, here.or(between(walk, option, i)), met.or(option.meets));
                    }
                }
            }
        }
        hang(walk, mount + 1, broken, met);
    }

    /** What a stack breaks at each of its positions, but for other stacks. */
    private List<Broken> alone(Scene scene, WhyStacks.Option option) {
        return scene.alone().computeIfAbsent(option, o -> {
            List<Broken> out = new ArrayList<>();
            for (int i = 0; i < o.broken.size(); i++) {
                Broken here = o.broken.get(i);
                for (WhyBodies.Named body : o.bodies.isEmpty() ? List.<WhyBodies.Named>of() : scene.near()) {
                    here = o.clashes(body).get(i) ? here.or(facts.clear(o.id(), body.id())) : here;
                }
                out.add(here);
            }
            return out;
        });
    }

    /** What a stack at a position breaks with those that hang already. */
    private Broken between(Walk walk, WhyStacks.Option option, int position) {
        Broken out = Broken.NOTHING;
        if (option.bodies.isEmpty() || fault == WhyFault.STACKS_NEVER_MEET) {
            return out;
        }
        for (Standing other : walk.standing()) {
            if (option.bodies.get(position).marginHmm(other.body()) < 0) {
                out = out.or(facts.clear(option.id(), other.id()));
            }
        }
        return out;
    }

    /** One candidate but for its placing and positions: mods, parts by role, texts of shapes by mount. */
    public record Told(Set<String> mods, Map<String, String> parts, Map<String, String> shapes) {}

    /**
     * How much a pair lacks at the best position that breaks nothing but what is said, for each placing where there is one.
     *
     * @param clear the one pair among what is broken
     * @return hundredths of a millimetre
     */
    public SortedSet<Integer> lacksHmm(Told told, Set<String> given, String clear) {
        SortedSet<Integer> out = new TreeSet<>();
        List<Mod> mods = question.chassis().mods().stream()
                .filter(m -> told.mods().contains(m.id()))
                .toList();
        Broken may = Broken.NOTHING;
        for (String id : given) {
            may = may.or(facts.fact(id));
        }
        List<List<WhyStacks.Option>> options = new ArrayList<>();
        for (Mount mount : stacks.mounts()) {
            String text = told.shapes().getOrDefault(mount.id(), "");
            if (!text.isEmpty()) {
                options.add(stacks.on(mount, mods).stream()
                        .filter(o -> o.text.equals(text))
                        .toList());
            }
        }
        List<WhyBodies.Named> builtIn = bodies.ofChassis(mods);
        for (WhyChoices.Filled filled : choices.all()) {
            Map<String, String> ids = new HashMap<>();
            filled.parts().forEach((role, part) -> ids.put(role, part.id()));
            if (ids.equals(told.parts())) {
                for (WhyBodies.Placed placed : bodies.placings(filled, choices.placedDrives(), usable(mods))) {
                    List<WhyBodies.Named> all = new ArrayList<>(builtIn);
                    all.addAll(placed.bodies());
                    Broken broken =
                            broken(mods).or(filled.broken()).or(placed.broken()).or(bodies.broken(all));
                    if (broken.isWithin(may)) {
                        Best best = new Best(clear, may, all);
                        best.walk(new Walk(new Scene(options, all), List.of()), 0);
                        if (best.marginHmm > Integer.MIN_VALUE) {
                            out.add(-best.marginHmm);
                        }
                    }
                }
            }
        }
        return out;
    }

    /** The largest margin of one pair over all positions that break nothing but what may be broken. */
    private final class Best {
        private final String clear;
        private final Broken may;
        private final List<WhyBodies.Named> bodies;
        private int marginHmm = Integer.MIN_VALUE;

        Best(String clear, Broken may, List<WhyBodies.Named> bodies) {
            this.clear = clear;
            this.may = may;
            this.bodies = bodies;
        }

        void walk(Walk walk, int next) {
            if (next == walk.scene().options().size()) {
                marginHmm = Math.max(marginHmm, margin(walk));
                return;
            }
            for (WhyStacks.Option option : walk.scene().options().get(next)) {
                List<Broken> alone = alone(walk.scene(), option);
                for (int i = 0; i < alone.size(); i++) {
                    if (alone.get(i).or(between(walk, option, i)).isWithin(may)) {
                        walk(walk.with(option, i), next + 1);
                    }
                }
            }
        }

        private int margin(Walk walk) {
            List<Standing> all = new ArrayList<>(walk.standing());
            bodies.forEach(b -> all.add(new Standing(b.id(), b.body())));
            int least = Integer.MAX_VALUE;
            for (int i = 0; i < all.size(); i++) {
                Standing one = all.get(i);
                for (Face wall : Face.values()) {
                    if (WhyFacts.clearId(one.id(), WhyBodies.wall(wall)).equals(clear)) {
                        least = Math.min(least, one.body().marginHmm(wall, insideHmm));
                    }
                }
                for (Standing two : all.subList(0, i)) {
                    if (WhyFacts.clearId(one.id(), two.id()).equals(clear)) {
                        least = Math.min(least, one.body().marginHmm(two.body()));
                    }
                }
            }
            return least;
        }
    }
}
