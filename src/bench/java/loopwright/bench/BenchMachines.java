package loopwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import loopwright.catalog.Catalog;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.brief.LoopWish.BlockOrder;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.Tube;
import loopwright.loop.Duty;
import loopwright.loop.Machine;
import loopwright.loop.Machine.FanMount;
import loopwright.loop.air.AirDirection;
import loopwright.loop.air.AirPath;

/** Draws what machines of the demo's kind are made of: three radiators, one bare row, passive openings, two blocks in series. */
final class BenchMachines {

    static final Machine.Site SITE = new Machine.Site(25, 0);

    /** A machine's parts, still to be put together. */
    record Order(List<FanMount> mounts, List<Machine.Vent> vents, Machine.Water water, double caseHeatW) {
        Machine machine() {
            return new Machine(SITE, mounts, vents, water, caseHeatW);
        }
    }

    private static final int[] DUTIES = {40, 50, 60, 70, 80, 90, 100};
    private static final double[] OPEN_SHARES = {0.35, 0.5, 0.65, 0.8, 1};
    private static final int RADIATORS = 3;

    private final Catalog catalog;
    private final Random random;
    private final List<Radiator> radiators;

    BenchMachines(Catalog catalog, long seed) {
        this.catalog = catalog;
        this.random = new Random(seed);
        this.radiators = catalog.all(Radiator.class).stream()
                .filter(r -> !fans(r.pattern().sizeMm()).isEmpty())
                .toList();
    }

    /** So many machines. */
    List<Order> draw(int count) {
        List<Order> out = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            out.add(order());
        }
        return List.copyOf(out);
    }

    private Order order() {
        Duty duty = new Duty(DUTIES[random.nextInt(DUTIES.length)]);
        List<FanMount> mounts = new ArrayList<>();
        for (int i = 0; i < RADIATORS; i++) {
            Radiator radiator = any(radiators);
            Optional<Machine.RadiatorAt> at = Optional.of(
                    new Machine.RadiatorAt(radiator, 0, 0.002 * face(radiator.pattern()).perimeterM()));
            mounts.add(mount("mount " + i, radiator.pattern(), at, duty));
        }
        mounts.add(mount("bare row", new Pattern(1 + random.nextInt(2), 120), Optional.empty(), duty));
        Pattern empty = new Pattern(2, 120);
        List<Machine.Vent> vents = List.of(
                new Machine.Vent("rear", Optional.of(air(new Pattern(1, 120))), 0),
                new Machine.Vent("side", Optional.of(air(empty)), 0),
                new Machine.Vent("seams and slots", Optional.empty(), 20e-4));
        return new Order(mounts, vents, water(), 40 + random.nextInt(60));
    }

    private FanMount mount(String name, Pattern pattern, Optional<Machine.RadiatorAt> radiator, Duty duty) {
        Machine.Fans fans = new Machine.Fans(any(fans(pattern.sizeMm())), pattern.fans(), 1 + random.nextInt(2), duty);
        AirDirection way = random.nextBoolean() ? AirDirection.IN : AirDirection.OUT;
        return new FanMount(name, way, fans, air(pattern), radiator);
    }

    private Machine.MountAir air(Pattern pattern) {
        AirPath path = new AirPath(
                OPEN_SHARES[random.nextInt(OPEN_SHARES.length)],
                Mount.Where.FACE,
                random.nextInt(3) == 0 ? OptionalDouble.of(0.55) : OptionalDouble.empty(),
                Optional.empty(),
                random.nextBoolean() ? 0.05 : Double.POSITIVE_INFINITY);
        return new Machine.MountAir(path, face(pattern));
    }

    private Machine.Water water() {
        List<Machine.BlockAt> blocks = List.of(
                new Machine.BlockAt(
                        Machine.PROCESSOR, "processor", any(Block.class).flow(), 120 + random.nextInt(100)),
                new Machine.BlockAt(Machine.CARD, "card", any(Block.class).flow(), 200 + random.nextInt(250)));
        return new Machine.Water(
                new Machine.PumpAt(any(Pump.class), new Duty(60 + 10 * random.nextInt(5))),
                any(Coolant.class),
                new Machine.Runs(any(Tube.class), 2),
                blocks,
                BlockOrder.SERIES);
    }

    private List<Fan> fans(int sizeMm) {
        return catalog.all(Fan.class).stream()
                .filter(f -> f.frame().sizeMm() == sizeMm)
                .toList();
    }

    private <P extends Part> P any(Class<P> kind) {
        return any(catalog.all(kind));
    }

    private <T> T any(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    private static AirPath.Face face(Pattern pattern) {
        double sizeM = pattern.sizeMm() / 1000.0;
        return new AirPath.Face(pattern.fans() * sizeM * sizeM, 2 * sizeM * (pattern.fans() + 1));
    }
}
