package loopwright.oracle.brute;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import loopwright.oracle.OracleCase;

/** What may hang on the wished mounts, position by position, with what it breaks. */
final class WhyStacks {
    private final OracleCase question;
    private final List<WhyWish> wishes;
    private final int[] insideHmm;
    private final WhyFacts facts;
    private final WhyFault fault;
    private final BruteRange range;
    private final Map<String, List<Option>> known = new HashMap<>();

    WhyStacks(OracleCase question, List<WhyWish> wishes, int[] insideHmm, WhyFacts facts, WhyFault fault) {
        this.question = question;
        this.wishes = wishes;
        this.insideHmm = insideHmm;
        this.facts = facts;
        this.fault = fault;
        this.range =
                new BruteRange(question.catalog(), question.brief().limits().freeAreaMin(), Fault.NONE);
    }

    /** A shape on a mount. */
    static final class Option {
        final String mount;
        final String text;
        /** Wishes that it has what they ask for. */
        final Broken meets;

        /** At each position what it breaks there, walls and all, but for other bodies; one entry if it takes no room. */
        final List<Broken> broken = new ArrayList<>();

        /** At each position its boxes; none if it takes no room. */
        final List<BruteBody> bodies = new ArrayList<>();

        private final Map<Integer, BitSet> clashes = new HashMap<>();

        Option(String mount, String text, Broken meets) {
            this.mount = mount;
            this.text = text;
            this.meets = meets;
        }

        String id() {
            return "stack:" + mount;
        }

        /** The positions at which it comes too close to a body. */
        BitSet clashes(WhyBodies.Named other) {
            return clashes.computeIfAbsent(other.number(), n -> {
                BitSet out = new BitSet();
                for (int i = 0; i < bodies.size(); i++) {
                    out.set(i, bodies.get(i).marginHmm(other.body()) < 0);
                }
                return out;
            });
        }
    }

    /** The mounts that wishes name, in the chassis's order. */
    List<Mount> mounts() {
        return question.chassis().mounts().stream()
                .filter(m -> wishes.stream().anyMatch(w -> names(w, m.id())))
                .toList();
    }

    private static boolean names(WhyWish wish, String mount) {
        return wish instanceof WhyWish.RadiatorOn r
                ? r.mounts().contains(mount)
                : wish instanceof WhyWish.NothingOn n && n.mount().equals(mount);
    }

    /** Whether a mod makes something on a mount. */
    static boolean isAbout(Mod mod, String mount) {
        Mod.Effect e = mod.effect();
        return e.seats().stream().anyMatch(s -> s.mount().equals(mount))
                || e.covers().stream().anyMatch(c -> c.mount().equals(mount))
                || e.airways().stream().anyMatch(a -> a.mount().equals(mount));
    }

    /** What may hang on a mount. */
    List<Option> on(Mount mount, List<Mod> mods) {
        List<Mod> about = mods.stream().filter(m -> isAbout(m, mount.id())).toList();
        return known.computeIfAbsent(mount.id() + about.stream().map(Mod::id).toList(), k -> make(mount, about));
    }

    /** The radiators that meet a wish: the brief's, or the catalogue's if the brief has none that does. */
    private List<Radiator> will(WhyWish.RadiatorOn wish) {
        List<Radiator> all = question.catalog().all(Radiator.class).stream()
                .filter(r -> wish.pattern().isEmpty() || wish.pattern().get().equals(r.pattern()))
                .filter(r -> wish.thicknessHmm().isEmpty()
                        || wish.thicknessHmm().get() == r.body().thicknessMm().valueHmm())
                .filter(r -> wish.id().isEmpty() || wish.id().get().equals(r.id()))
                .toList();
        List<Radiator> own = BruteShape.candidates(all, question.brief().loop().radiators());
        return own.isEmpty() ? all : own;
    }

    private List<Option> make(Mount mount, List<Mod> mods) {
        Map<Radiator, Broken> will = new LinkedHashMap<>();
        for (WhyWish wish : wishes) {
            if (wish instanceof WhyWish.RadiatorOn r && r.mounts().contains(mount.id())) {
                will(r).forEach(one -> will.merge(one, facts.fact(r.fact()), Broken::or));
            }
        }
        Set<Integer> ownFans = new LinkedHashSet<>();
        BruteShape.candidates(
                        question.catalog().all(Fan.class),
                        question.brief().loop().fans())
                .forEach(f -> ownFans.add(fanKey(f)));
        Map<String, Option> out = new LinkedHashMap<>();
        will.forEach((radiator, meets) -> {
            for (Fan fan : question.catalog().all(Fan.class)) {
                if (fan.frame().sizeMm() == radiator.pattern().sizeMm()) {
                    Broken fans = ownFans.contains(fanKey(fan)) ? Broken.NOTHING : facts.fact("choice:fans");
                    for (BruteShape.Way way : BruteShape.Way.OF_RADIATORS) {
                        for (boolean high : new boolean[] {false, true}) {
                            BruteShape shape = new BruteShape(radiator, fan, way, high);
                            option(mount, mods, shape, meets, fans)
                                    .ifPresent(o -> out.putIfAbsent(radiator.id() + fanKey(fan) + o.text, o));
                        }
                    }
                }
            }
        });
        return List.copyOf(out.values());
    }

    private static int fanKey(Fan fan) {
        return fan.frame().sizeMm() * 1_000_000 + fan.frame().thicknessMm().valueHmm();
    }

    private Optional<Option> option(Mount mount, List<Mod> mods, BruteShape shape, Broken meets, Broken fans) {
        Option out = new Option(mount.id(), shape.text(), meets);
        Ruler ruler = new Ruler();
        Broken broken = fans;
        for (WhyWish wish : wishes) {
            if (wish instanceof WhyWish.NothingOn n && n.mount().equals(mount.id())) {
                broken = broken.or(facts.fact(n.fact()));
            }
        }
        if (range.freeArea(mount, shape.radiator().pattern().sizeMm(), mods, ruler)
                < question.brief().limits().freeAreaMin()) {
            broken = broken.or(facts.fact("open:" + mount.id()));
        }
        if (!shape.way().usesCover() && !range.outsideDepth(mount, mods, ruler)) {
            broken = broken.or(facts.fact("outside:" + mount.id()));
        }
        if (range.seats(mount, mods).stream()
                .noneMatch(s -> s.pattern().equals(shape.radiator().pattern()))) {
            out.broken.add(broken.or(facts.fact("seat:" + mount.id())));
            return shape.way().usesCover() ? Optional.empty() : Optional.of(out);
        }
        hang(out, mount, mods, shape, ruler.sawUnknown() ? broken.or(unknown(mount)) : broken);
        return out.broken.isEmpty() ? Optional.empty() : Optional.of(out);
    }

    private Broken unknown(Mount mount) {
        return fault == WhyFault.KNOWN_IGNORED ? Broken.NOTHING : facts.fact("known:stack:" + mount.id());
    }

    private void hang(Option out, Mount mount, List<Mod> mods, BruteShape shape, Broken everywhere) {
        Face face = question.chassis().shell().panels().stream()
                .filter(p -> p.id().equals(mount.panel()))
                .map(Panel::face)
                .findFirst()
                .orElseThrow();
        BruteBody body = new BruteStack(question.catalog().practice().room(), face, mount, shape, insideHmm, 0).body();
        Axis sideways = BruteStack.sideways(face, mount);
        BruteRun.Hanging hanging = new BruteRun.Hanging(
                mount.id(), out.text, body, Xyz.of(mount.lengthwise()), Xyz.of(sideways), List.of());
        Set<List<Integer>> measured = new LinkedHashSet<>();
        range.seated(mount, shape, mods, false).forEach(p -> measured.add(List.of(p[0], p[1])));
        for (int[] p : range.seated(mount, shape, mods, true)) {
            boolean known = measured.contains(List.of(p[0], p[1])) && !body.unknown();
            int[] at = fault == WhyFault.POSITION_OFF_BY_ONE ? new int[] {p[0] + 1, p[1]} : p;
            BruteBody here = hanging.at(at);
            Broken broken = known ? everywhere : everywhere.or(unknown(mount));
            for (Face wall : Face.values()) {
                if (here.marginHmm(wall, insideHmm) < 0 && fault != WhyFault.WALL_FORGOTTEN) {
                    broken = broken.or(facts.clear(out.id(), WhyBodies.wall(wall)));
                }
            }
            out.broken.add(broken);
            out.bodies.add(here);
        }
    }
}
