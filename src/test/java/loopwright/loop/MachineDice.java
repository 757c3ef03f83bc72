package loopwright.loop;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.brief.LoopWish.BlockOrder;
import loopwright.catalog.chassis.Mount.Where;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import loopwright.loop.air.AirDirection;
import loopwright.loop.air.AirPath;
import loopwright.testing.MachineParts;

/** Random machines from invented parts: one to three mounts, either way, behind covers, filters, slots and gaps. */
final class MachineDice {

    private static final List<String> PATTERNS = List.of("1x120", "2x120", "3x120", "2x140");

    private static final double[][] CORES = {{12, 18, 1}, {20, 16, 1}, {33, 13, 2}, {47, 11, 2}};

    private static final List<Machine.Site> SITES =
            List.of(new Machine.Site(22, 0), new Machine.Site(28, 300), new Machine.Site(35, 1800));

    private static final Map<Machine.Site, MachineModel> MODELS = new HashMap<>();

    private final Random random;

    MachineDice(long seed) {
        random = new Random(seed);
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    boolean oneIn(int many) {
        return random.nextInt(many) == 0;
    }

    /** The model of a site, made once. */
    static MachineModel model(Machine.Site site) {
        return MODELS.computeIfAbsent(site, s -> new MachineModel(MachineParts.PRACTICE, s));
    }

    /** A machine's steady state. */
    static SteadyState solve(Machine machine) {
        return model(machine.site()).solve(machine);
    }

    /** A machine with at least one radiator; its fans all have one duty. */
    Machine machine() {
        Duty duty = new Duty(5 * (4 + below(17)));
        int count = 1 + below(3);
        List<Machine.FanMount> mounts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            mounts.add(mount("mount " + i, duty, i == 0 || !oneIn(3)));
        }
        return new Machine(SITES.get(below(SITES.size())), mounts, vents(), water(), between(10, 200));
    }

    private List<Machine.Vent> vents() {
        List<Machine.Vent> out = new ArrayList<>();
        for (int i = below(3); i > 0; i--) {
            Pattern pattern = Pattern.parse(PATTERNS.get(below(PATTERNS.size())));
            out.add(new Machine.Vent(
                    "empty " + i, Optional.of(new Machine.MountAir(path(), MachineParts.face(pattern))), 0));
        }
        out.add(new Machine.Vent("seams", Optional.empty(), between(3e-4, 60e-4)));
        return out;
    }

    Machine.FanMount mount(String name, Duty duty, boolean withRadiator) {
        Pattern pattern = Pattern.parse(PATTERNS.get(below(PATTERNS.size())));
        Machine.Fans fans = new Machine.Fans(fan(pattern.sizeMm()), pattern.fans(), 1 + below(2), duty);
        double[] c = CORES[below(CORES.length)];
        Radiator radiator = MachineParts.radiator(pattern.toString(), c[0], c[1], (int) c[2]);
        return new Machine.FanMount(
                name,
                oneIn(2) ? AirDirection.IN : AirDirection.OUT,
                fans,
                new Machine.MountAir(path(), MachineParts.face(pattern)),
                withRadiator
                        ? Optional.of(new Machine.RadiatorAt(
                                radiator, oneIn(3) ? between(0, 0.3) : 0, oneIn(2) ? between(0, 8e-4) : 0))
                        : Optional.empty());
    }

    /** One of four, from slim and weak to thick and strong. */
    Fan fan(int sizeMm) {
        double wide = sizeMm == 140 ? 1.3 : 1;
        return switch (below(4)) {
            case 0 -> MachineParts.fan("slim-" + sizeMm, sizeMm, 62 * wide, 10.8, 10);
            case 1 -> MachineParts.fan("quiet-" + sizeMm, sizeMm, 82 * wide, 14, 10);
            case 2 -> MachineParts.fan("pressure-" + sizeMm, sizeMm, 117 * wide, 28.3, 10);
            default -> MachineParts.fan("thick-" + sizeMm, sizeMm, 126 * wide, 43, 10);
        };
    }

    AirPath path() {
        boolean edges = oneIn(6);
        return new AirPath(
                edges ? between(0.1, 0.5) : between(0.1, 1),
                edges ? Where.EDGES : Where.FACE,
                oneIn(3) ? OptionalDouble.of(between(0.3, 0.7)) : OptionalDouble.empty(),
                oneIn(5)
                        ? Optional.of(new AirPath.Outlet(
                                oneIn(2) ? 0 : between(0.2, 0.6), between(20e-4, 150e-4), between(0.01, 0.04)))
                        : Optional.empty(),
                edges || oneIn(3) ? between(0.01, 0.1) : Double.POSITIVE_INFINITY);
    }

    Machine.Water water() {
        List<Machine.BlockAt> blocks = new ArrayList<>();
        blocks.add(new Machine.BlockAt(
                Machine.PROCESSOR, "processor", MachineParts.block(between(3, 20), 0.1), between(50, 250)));
        if (!oneIn(4)) {
            blocks.add(new Machine.BlockAt(
                    Machine.CARD, "card", MachineParts.block(between(5, 16), 0.05), between(100, 400)));
        }
        double[][] pumps = {{20, 10, 5}, {49, 16.7, 15}, {38, 25, 19}};
        double[] p = pumps[below(pumps.length)];
        Coolant coolant = switch (below(3)) {
            case 0 -> MachineParts.coolant(Coolant.BaseLiquid.PROPYLENE_GLYCOL, 30);
            case 1 -> MachineParts.coolant(Coolant.BaseLiquid.ETHYLENE_GLYCOL, 20);
            default -> MachineParts.coolant(Coolant.BaseLiquid.WATER, 0);
        };
        return new Machine.Water(
                new Machine.PumpAt(MachineParts.pump(p[0], p[1], p[2]), new Duty(10 * (4 + below(7)))),
                coolant,
                new Machine.Runs(MachineParts.tube(oneIn(2) ? 10 : 12.5), between(0.8, 3)),
                blocks,
                oneIn(2) ? BlockOrder.SERIES : BlockOrder.PARALLEL);
    }
}
