package loopwright.loop.study;

import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.part.Pump;
import loopwright.loop.Duty;
import loopwright.loop.Machine;

/** Machines that differ from another in one thing. */
final class Changed {

    private static final double PERCENT = 100;

    private Changed() {}

    /** Another mount in one's place. */
    static Machine mount(Machine machine, int index, Machine.FanMount mount) {
        List<Machine.FanMount> mounts = new ArrayList<>(machine.mounts());
        mounts.set(index, mount);
        return mounts(machine, mounts);
    }

    static Machine mounts(Machine machine, List<Machine.FanMount> mounts) {
        return new Machine(machine.site(), mounts, machine.openings(), machine.water(), machine.caseHeatW());
    }

    static Machine blocks(Machine machine, List<Machine.BlockAt> blocks) {
        Machine.Water water = machine.water();
        return water(machine, new Machine.Water(water.pump(), water.coolant(), water.runs(), blocks, water.order()));
    }

    static Machine pump(Machine machine, Machine.PumpAt pump) {
        Machine.Water water = machine.water();
        return water(machine, new Machine.Water(pump, water.coolant(), water.runs(), water.blocks(), water.order()));
    }

    private static Machine water(Machine machine, Machine.Water water) {
        return new Machine(machine.site(), machine.mounts(), machine.openings(), water, machine.caseHeatW());
    }

    /** The pump with its head so many times as high, and the same heat. */
    static Machine.PumpAt headTimes(Machine.PumpAt at, double factor) {
        Pump pump = at.pump();
        Pump.Water water = pump.water();
        List<Pump.CurvePoint> curve = water.curve().stream()
                .map(p -> new Pump.CurvePoint(p.flowLPerMin(), p.headKPa() * factor))
                .toList();
        return pump(at, new Pump.Water(curve, water.coolantML(), water.portRoomMm()), pump.electric());
    }

    /** The pump with the heat that it has at another duty, at most its own. */
    static Machine.PumpAt heatOf(Machine.PumpAt at, Duty cooler) {
        double speeds = new Machine.PumpAt(at.pump(), cooler).speedShare() / at.speedShare();
        Pump.Electric own = at.pump().electric();
        Pump.Electric electric = new Pump.Electric(
                own.powerW(), own.heatToCoolantW() * speeds * speeds * speeds, own.dutyMinPercent(), own.noiseMaxDBA());
        return pump(at, at.pump().water(), electric);
    }

    private static Machine.PumpAt pump(Machine.PumpAt at, Pump.Water water, Pump.Electric electric) {
        Pump p = at.pump();
        return new Machine.PumpAt(
                new Pump(
                        p.id(),
                        p.title(),
                        p.variantOf(),
                        p.buy(),
                        p.kind(),
                        p.body(),
                        water,
                        electric,
                        p.feed(),
                        p.ports(),
                        p.fill(),
                        p.massG()),
                at.duty());
    }

    /** Fans at so many times their speed, at most full speed. */
    static Machine.FanMount speedTimes(Machine.FanMount mount, double factor) {
        return mount.at(new Duty(Math.min(PERCENT, speedShare(mount) * PERCENT * factor)));
    }

    /** Share of full speed that a mount's fans turn at. */
    static double speedShare(Machine.FanMount mount) {
        Machine.Fans fans = mount.fans();
        return fans.duty().speedShare(fans.fan().air().dutyMinPercent());
    }
}
