package loopwright.loop;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.brief.LoopWish.BlockOrder;
import loopwright.catalog.part.Coolant;
import loopwright.loop.air.AirDirection;
import loopwright.loop.air.AirPath;
import loopwright.testing.MachineParts;

/** A plain machine: three sections in front that blow in, two in the roof that blow out, all panels open. */
final class Cooled {

    static final Machine.Site SITE = new Machine.Site(25, 0);

    private Cooled() {}

    /** The machine with a processor of some heat, and a card of 250 W. */
    static Machine with(double processorW, double resistanceKPerW, BlockOrder order) {
        return new Machine(
                SITE,
                List.of(
                        mount("front", "3x120", AirDirection.IN, 1, AirPath.OPEN),
                        mount("roof", "2x120", AirDirection.OUT, 1, AirPath.OPEN)),
                List.of(new Machine.Vent("seams", Optional.empty(), 60e-4)),
                new Machine.Water(
                        new Machine.PumpAt(MachineParts.pump(38, 25, 15), Duty.FULL),
                        MachineParts.coolant(Coolant.BaseLiquid.WATER, 0),
                        new Machine.Runs(MachineParts.tube(10), 1.5),
                        List.of(
                                new Machine.BlockAt(
                                        Machine.PROCESSOR,
                                        "processor",
                                        MachineParts.block(14, resistanceKPerW),
                                        processorW),
                                new Machine.BlockAt(Machine.CARD, "card", MachineParts.block(9, 0.06), 250)),
                        order),
                80);
    }

    /** 120 W in the processor, blocks in series. */
    static Machine usual() {
        return with(120, 0.18, BlockOrder.SERIES);
    }

    /** A mount with the 30 mm radiator and the trade's fans at 1300 rpm. */
    static Machine.FanMount mount(String name, String pattern, AirDirection way, int layers, AirPath path) {
        Pattern fans = Pattern.parse(pattern);
        return new Machine.FanMount(
                name,
                way,
                new Machine.Fans(MachineParts.pressureFan(1300), fans.fans(), layers, Duty.FULL),
                new Machine.MountAir(path, MachineParts.face(fans)),
                Optional.of(new Machine.RadiatorAt(MachineParts.radiator(pattern, 20, 16, 1), 0, 0)));
    }

    /** The same machine with other mounts. */
    static Machine mounted(Machine machine, List<Machine.FanMount> mounts) {
        return new Machine(machine.site(), mounts, machine.openings(), machine.water(), machine.caseHeatW());
    }

    /** The steady state, which there must be. */
    static Steady steady(Machine machine) {
        SteadyState state = MachineDice.solve(machine);
        if (state instanceof SteadyState.None none) {
            throw new AssertionError("no steady state: " + none.why());
        }
        return (Steady) state;
    }
}
