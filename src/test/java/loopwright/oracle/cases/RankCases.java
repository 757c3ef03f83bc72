package loopwright.oracle.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import loopwright.catalog.Catalog;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.BriefLimits;
import loopwright.catalog.brief.Terms;
import loopwright.catalog.chassis.Airway;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.Shell;
import loopwright.catalog.part.Part;
import loopwright.catalog.standard.Practice;
import loopwright.oracle.OracleCase;

/** Generated cases with prices: several parts of each shape, pumps, supplies, filters, leads, labour and limits. */
public final class RankCases {

    /** Most mods of a case, so that every subset can be walked. */
    private static final int MODS = 5;

    private final Dice dice;
    private final OracleCase base;

    private RankCases(long seed) {
        dice = new Dice(seed + 1_000_003, 1, List.of("none"), 0);
        base = CaseGenerator.generate(seed, CaseGenerator.Mode.TINY);
    }

    /** The case of a seed. */
    public static OracleCase generate(long seed) {
        return new RankCases(seed).draw(seed);
    }

    private OracleCase draw(long seed) {
        RankPhysics physics = new RankPhysics(dice);
        Chassis chassis = chassis();
        RankParts parts = new RankParts(
                dice, new PlusMinus(seed + 1_000_003), chassis.mounts().size() + (physics.isParallel() ? 1 : 0));
        TreeMap<String, Part> all = new TreeMap<>();
        base.catalog().parts().values().stream()
                .filter(p -> !(p instanceof Chassis))
                .forEach(parts::offer);
        parts.tubesAndCoolants();
        parts.all().forEach(p -> all.put(p.id(), p));
        RankLoop loop = new RankLoop(seed);
        loop.into(all);
        all.put(chassis.id(), chassis);
        Practice practice = physics.practice(base.catalog().practice());
        Catalog catalog = new Catalog("generated", "EUR", all, base.catalog().standards(), practice);
        return new OracleCase(seed, catalog, chassis, loop.wished(brief(physics)));
    }

    private Chassis chassis() {
        Chassis was = base.chassis();
        List<Mount> mounts = was.mounts().stream().map(this::aired).toList();
        List<Mod> mods = new ArrayList<>();
        was.mods().forEach(m -> mods.add(worked(m, m.rules(), m.effect())));
        if (mods.size() < MODS && dice.chance(60)) {
            mods.add(filterMod("filter", dice.oneOf(mounts).id(), List.of(), dice.oneOf(List.of(0.7, 0.95, 1.0))));
        }
        if (mods.size() < MODS && dice.chance(25)) {
            List<String> needs = dice.chance(30) ? List.of(dice.oneOf(mods).id()) : List.of();
            mods.add(filterMod("mesh", dice.oneOf(mounts).id(), needs, dice.oneOf(List.of(0.3, 1.0))));
        }
        if (mods.size() < MODS && dice.chance(15)) {
            polish(mods);
        }
        return new Chassis(
                was.id(),
                was.title(),
                was.variantOf(),
                RankParts.buy(dice),
                shell(was.shell()),
                was.inside(),
                mounts,
                mods);
    }

    private Shell shell(Shell was) {
        Optional<Double> leak = dice.chance(40) ? Optional.of(dice.oneOf(List.of(0.0, 3.0, 60.0))) : was.leakCm2();
        return new Shell(was.interior(), was.volumeL(), was.massKg(), was.panels(), leak);
    }

    /** The same mount with another way for air: a filter, openings round the edges only, a masked core, with or without a gasket. */
    private Mount aired(Mount was) {
        Optional<Double> filter = dice.chance(40) ? Optional.of(dice.oneOf(List.of(0.4, 0.6))) : Optional.empty();
        boolean edges = dice.chance(20);
        Mount.Opening opening = new Mount.Opening(
                was.opening().freeArea(),
                edges ? Mount.Where.EDGES : was.opening().where(),
                filter,
                was.opening().outsideDepthMm(),
                dice.chance(30) ? Optional.of(dice.oneOf(List.of(0.1, 0.3))) : Optional.empty());
        return new Mount(
                was.id(),
                was.panel(),
                was.lengthwise(),
                was.insetMm(),
                was.seats(),
                opening,
                was.gasket(),
                was.touches());
    }

    private Mod filterMod(String id, String mount, List<String> requires, double share) {
        Airway airway = new Airway(
                mount,
                Optional.empty(),
                Optional.empty(),
                dice.chance(20) ? Optional.of(0.9) : Optional.empty(),
                Optional.of(share),
                Optional.empty());
        Mod.Effect effect = new Mod.Effect(
                List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(airway), List.of());
        return mod(id, Mod.Kind.CHANGE_FILTER, new Mod.Rules(requires, List.of()), effect);
    }

    /** A mod that changes nothing by itself; another may require it. */
    private void polish(List<Mod> mods) {
        Mod.Effect nothing =
                new Mod.Effect(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
        if (dice.chance(60)) {
            int at = dice.between(0, mods.size() - 1);
            Mod was = mods.get(at);
            List<String> requires = new ArrayList<>(was.rules().requires());
            requires.add("polish");
            Mod.Rules rules = new Mod.Rules(List.copyOf(requires), was.rules().excludes());
            mods.set(at, worked(was, rules, was.effect()));
        }
        mods.add(mod("polish", Mod.Kind.FIT_INSERT, new Mod.Rules(List.of(), List.of()), nothing));
    }

    private Mod mod(String id, Mod.Kind kind, Mod.Rules rules, Mod.Effect effect) {
        Mod.Look look = new Mod.Look(0, 0, Mod.WayBack.YES, Dice.hmm(0));
        return new Mod(id, id, kind, rules, work(), look, effect);
    }

    private Mod worked(Mod was, Mod.Rules rules, Mod.Effect effect) {
        return new Mod(was.id(), was.title(), was.kind(), rules, work(), was.look(), effect);
    }

    private Mod.Work work() {
        return new Mod.Work(
                dice.oneOf(List.of(5, 12, 30, 30, 60)),
                dice.chance(30) ? 20 : 0,
                dice.chance(30) ? dice.between(1, 3) : 0,
                dice.oneOf(List.of(0, 0, 500, 1234)),
                1);
    }

    private Brief brief(RankPhysics physics) {
        Brief was = base.brief();
        BriefLimits limits = new BriefLimits(
                dice.chance(30) ? Optional.of(dice.between(52, 100) * 1000L) : Optional.empty(),
                22,
                dice.chance(50) ? 80 : dice.between(42, 70) + 0.25,
                dice.chance(35) ? Optional.of(dice.between(26, 44) + 0.5) : Optional.empty(),
                dice.chance(25) ? Optional.of(dice.between(22, 37) / 5.0) : Optional.empty(),
                dice.chance(30) ? Optional.of(dice.between(8, 18)) : Optional.empty(),
                was.limits().freeAreaMin(),
                was.limits().mods(),
                physics.limits());
        Terms terms = new Terms(
                "EUR",
                dice.oneOf(List.of(6000L, 6000L, 4321L)),
                dice.oneOf(List.of(0.0, 5.0, 7.5, 8.3)),
                dice.oneOf(List.of(240, 222, 252)),
                dice.oneOf(List.of(8.0, 2.4, 0.7)),
                base.chassis().mounts().size() < 3 && !physics.isParallel() ? dice.oneOf(List.of(50, 50, 40, 30)) : 50,
                was.terms().supplyHeadroomPercent());
        return new Brief(
                was.id(), was.title(), was.client(), was.chassis(), was.parts(), physics.loop(), limits, terms);
    }
}
