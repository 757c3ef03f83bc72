package loopwright.oracle.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Stream;
import loopwright.catalog.Catalog;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.BriefLimits;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.brief.LoopWish;
import loopwright.catalog.brief.Wanted;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Inside;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.ModSeat;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.Place;
import loopwright.catalog.chassis.Shell;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Memory;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.Reservoir;
import loopwright.catalog.part.Supply;
import loopwright.oracle.OracleCase;
import loopwright.oracle.WhyQuestion;
import loopwright.oracle.brute.WhyWish;
import loopwright.quantity.Dimension;

/**
 * Tiny cases made harder, with wishes: the brief chooses among some parts and the catalogue has others, mods are forbidden and
 * rooms a few hundredths shorter.
 */
public final class WhyCases {
    private final SplittableRandom random;
    private final OracleCase base;
    private final Chassis chassis;
    private final Catalog catalog;

    private WhyCases(long seed) {
        this.random = new SplittableRandom(seed * 104_729 + 5);
        this.base = CaseGenerator.generate(seed, CaseGenerator.Mode.TINY);
        this.chassis = smaller();
        TreeMap<String, Part> parts = new TreeMap<>(base.catalog().parts());
        List<Part> besides = new WhyParts(random, base.catalog()).drawn();
        for (Part part : new CaseElectric(seed + 1).besides(besides, base.catalog(), base.brief())) {
            parts.put(part.id(), part);
        }
        parts.put(chassis.id(), chassis);
        Catalog was = base.catalog();
        this.catalog = new Catalog(was.version(), was.currency(), parts, was.standards(), was.practice());
    }

    /** The question of a seed. */
    public static WhyQuestion generate(long seed) {
        WhyCases one = new WhyCases(seed);
        OracleCase question = new OracleCase(seed, one.catalog, one.chassis, one.brief());
        return new WhyQuestion(question, one.wishes());
    }

    private boolean chance(int percent) {
        return random.nextInt(100) < percent;
    }

    private <T> T oneOf(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    /** A few hundredths less depth or height, more often than not. */
    private Chassis smaller() {
        Chassis was = base.chassis();
        Shell.Interior in = was.shell().interior();
        int depth = in.depthMm().valueHmm() - (chance(35) ? random.nextInt(1, 15) : 0);
        int height = in.heightMm().valueHmm() - (chance(20) ? random.nextInt(1, 12) : 0);
        Shell shell = new Shell(
                new Shell.Interior(in.widthMm(), Dimension.ofHmm(depth), Dimension.ofHmm(height)),
                was.shell().volumeL(),
                was.shell().massKg(),
                was.shell().panels(),
                was.shell().leakCm2());
        Inside all = new Inside(
                was.inside().board(),
                was.inside().obstructions(),
                was.inside().removables(),
                was.inside().places().stream().map(this::place).toList());
        return new Chassis(was.id(), was.title(), was.variantOf(), was.buy(), shell, all, was.mounts(), was.mods());
    }

    /** Now and then a place holds something else too. */
    private Place place(Place was) {
        if (!chance(12)) {
            return was;
        }
        List<Place.Holds> holds = new ArrayList<>(was.holds());
        holds.add(oneOf(List.of(
                Place.Holds.D2_5,
                Place.Holds.PUMP,
                Place.Holds.PUMP_RESERVOIR,
                Place.Holds.SFX,
                Place.Holds.RESERVOIR)));
        return new Place(
                was.id(),
                was.title(),
                holds.stream().distinct().toList(),
                was.pose(),
                was.inside(),
                was.against(),
                was.touches());
    }

    private <P extends Part> Choice own(Class<P> kind, Optional<Integer> floor) {
        if (chance(15)) {
            return new Choice(List.of(), floor);
        }
        if (chance(3)) {
            return new Choice(List.of("nothing-there-is"), floor);
        }
        return new Choice(base.catalog().all(kind).stream().map(Part::id).toList(), floor);
    }

    private Brief brief() {
        Brief was = base.brief();
        List<String> drives = new ArrayList<>(was.parts().drives());
        for (int extra = chance(25) ? 2 : 0; extra > 0; extra--) {
            drives.add(oneOf(List.of("drive-a", "drive-b", "drive-b", "drive-m")));
        }
        Wanted wanted = new Wanted(
                own(Board.class, Optional.empty()),
                own(Processor.class, Optional.of(50)),
                own(GraphicsCard.class, Optional.empty()),
                own(Memory.class, Optional.empty()),
                drives,
                own(Block.class, Optional.empty()),
                Optional.of(own(Supply.class, Optional.empty())));
        LoopWish loop = new LoopWish(
                Optional.of(own(Radiator.class, Optional.empty())),
                Optional.of(own(Fan.class, Optional.empty())),
                Optional.of(own(Pump.class, Optional.empty())),
                Optional.of(own(Reservoir.class, Optional.empty())),
                was.loop().tube(),
                was.loop().tubeM(),
                was.loop().coolant(),
                was.loop().coolantL(),
                was.loop().run());
        return new Brief(was.id(), was.title(), was.client(), was.chassis(), wanted, loop, limits(), was.terms());
    }

    private BriefLimits limits() {
        List<String> forbidden = new ArrayList<>();
        for (Mod mod : chassis.mods()) {
            if (chance(25)) {
                forbidden.add(mod.id());
            }
        }
        BriefLimits l = base.brief().limits();
        return new BriefLimits(
                l.budgetCents(),
                l.roomC(),
                l.coolantMaxC(),
                l.noiseMaxDBA(),
                l.labourMaxH(),
                l.leadMaxDays(),
                l.freeAreaMin(),
                new BriefLimits.ModLimits(
                        forbidden,
                        chance(25) ? Optional.of(random.nextInt(2)) : Optional.empty(),
                        chance(20) ? Optional.of(random.nextInt(3)) : Optional.empty(),
                        false),
                l.heat());
    }

    private List<WhyWish> wishes() {
        List<WhyWish> out = new ArrayList<>();
        List<String> mounts = chassis.mounts().stream().map(m -> m.id()).toList();
        if (chance(8)) {
            return List.of(
                    new WhyWish.RadiatorOn("radiator", mounts, Optional.empty(), Optional.empty(), Optional.empty()));
        }
        for (String mount : mounts) {
            if (out.size() < (hasUnknownSlots() ? 1 : 2) && chance(70)) {
                out.add(onMount(mount));
            }
        }
        if (chance(10) || out.isEmpty()) {
            out.add(onMount(oneOf(mounts.subList(0, 1))));
        }
        if (chance(35)) {
            List<Part> parts = catalog.parts().values().stream()
                    .filter(p -> !role(p).isEmpty())
                    .toList();
            Part part = oneOf(parts);
            out.add(new WhyWish.PartFor(role(part) + "=" + part.id(), role(part), part.id()));
        }
        if (chance(30) && !chassis.mods().isEmpty()) {
            String mod = oneOf(chassis.mods()).id();
            out.add(chance(50) ? new WhyWish.With("with=" + mod, mod) : new WhyWish.Without("without=" + mod, mod));
        }
        return out.stream().distinct().toList();
    }

    /** A slot whose start is not known starts at 0: too many positions for two of them. */
    private boolean hasUnknownSlots() {
        Stream<Mount.Seat> own = chassis.mounts().stream().flatMap(m -> m.seats().stream());
        Stream<Mount.Seat> made = chassis.mods().stream()
                .flatMap(m -> m.effect().seats().stream())
                .map(ModSeat::seat);
        return Stream.concat(own, made)
                .flatMap(s -> Stream.concat(s.lengthwiseMm().stream(), s.sidewaysMm().stream()))
                .anyMatch(s -> s.from().isUnknown() || s.to().isUnknown());
    }

    private WhyWish onMount(String mount) {
        Radiator radiator = oneOf(catalog.all(Radiator.class));
        Optional<Pattern> pattern = Optional.of(radiator.pattern());
        int thick = radiator.body().thicknessMm().valueHmm();
        return switch (random.nextInt(9)) {
            case 0, 1 ->
                new WhyWish.RadiatorOn(
                        mount + "=radiator", List.of(mount), Optional.empty(), Optional.empty(), Optional.empty());
            case 2, 3 ->
                new WhyWish.RadiatorOn(
                        mount + "=" + radiator.pattern(), List.of(mount), pattern, Optional.empty(), Optional.empty());
            case 4, 5 ->
                new WhyWish.RadiatorOn(
                        mount + "=" + radiator.pattern() + "/" + thick,
                        List.of(mount),
                        pattern,
                        Optional.of(thick),
                        Optional.empty());
            case 6, 7 ->
                new WhyWish.RadiatorOn(
                        mount + "=" + radiator.id(),
                        List.of(mount),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(radiator.id()));
            default -> new WhyWish.NothingOn(mount + "=nothing", mount);
        };
    }

    private static String role(Part part) {
        if (part instanceof GraphicsCard) {
            return "card";
        }
        boolean single = part instanceof Board
                || part instanceof Processor
                || part instanceof Memory
                || part instanceof Block
                || part instanceof Supply
                || part instanceof Pump
                || part instanceof Reservoir;
        return single ? part.getClass().getSimpleName().toLowerCase(java.util.Locale.ROOT) : "";
    }
}
