package loopwright.loop.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.loop.Duty;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.MountSound;
import loopwright.loop.Nudge;
import loopwright.loop.SoundPower;
import loopwright.loop.Steady;
import loopwright.loop.air.AirBranch;
import loopwright.loop.air.AirDirection;
import loopwright.loop.air.AirResistance;
import loopwright.loop.air.CaseAir;
import loopwright.loop.air.CaseFlow;

/** A machine's fans, mount by mount, and its pump, the last: what they do at any whole percent of duty, each worked out once. */
final class Motors {

    private static final int FULL = 100;

    private final MachineModel model;
    private final Machine machine;
    private final List<AirResistance> openings = new ArrayList<>();
    private final List<Map<Integer, AirBranch>> branches = new ArrayList<>();
    private final List<Map<Integer, SoundPower>> sounds = new ArrayList<>();
    private final Map<Duties, CaseFlow> flows = new HashMap<>();

    Motors(MachineModel model, Machine machine) {
        this.model = model;
        this.machine = machine;
        machine.openings().forEach(v -> openings.add(model.opening(v, Nudge.NONE)));
        machine.mounts().forEach(m -> branches.add(new HashMap<>()));
        for (int i = 0; i <= machine.mounts().size(); i++) {
            sounds.add(new HashMap<>());
        }
    }

    MachineModel model() {
        return model;
    }

    /** All duties that make a difference: from the least that each motor turns at. */
    DutyBox all() {
        List<Integer> low = new ArrayList<>();
        List<Integer> high = new ArrayList<>();
        for (Machine.FanMount mount : machine.mounts()) {
            low.add(least(mount.fans().fan().air().dutyMinPercent()));
            high.add(FULL);
        }
        low.add(least(machine.water().pump().pump().electric().dutyMinPercent()));
        high.add(FULL);
        return new DutyBox(new Duties(low), new Duties(high));
    }

    private static int least(double dutyMinPercent) {
        return Math.max(1, (int) Math.ceil(dutyMinPercent));
    }

    /** One motor, or all fans of one mount. */
    SoundPower sound(int motor, int percent) {
        return sounds.get(motor).computeIfAbsent(percent, p -> {
            Duty duty = new Duty(p);
            return motor == pump()
                    ? MountSound.of(new Machine.PumpAt(machine.water().pump().pump(), duty))
                    : MountSound.of(machine.mounts().get(motor).at(duty));
        });
    }

    /** All of them. */
    SoundPower sound(Duties duties) {
        SoundPower sum = SoundPower.NONE;
        for (int i = 0; i <= pump(); i++) {
            sum = sum.plus(sound(i, duties.at(i)));
        }
        return sum;
    }

    int pump() {
        return machine.mounts().size();
    }

    AirDirection direction(int mount) {
        return machine.mounts().get(mount).direction();
    }

    AirBranch branch(int mount, int percent) {
        return branches.get(mount)
                .computeIfAbsent(
                        percent, p -> model.branch(machine.mounts().get(mount).at(new Duty(p)), Nudge.NONE));
    }

    /** The branches at their duties. */
    List<AirBranch> branches(Duties duties) {
        List<AirBranch> out = new ArrayList<>();
        for (int i = 0; i < pump(); i++) {
            out.add(branch(i, duties.at(i)));
        }
        return out;
    }

    /** The case's air; the pump's duty does not matter. */
    CaseFlow air(Duties duties) {
        return flows.computeIfAbsent(duties.with(pump(), FULL), d -> new CaseAir(branches(d), openings).balance());
    }

    /** The machine at these duties. */
    Machine machine(Duties duties) {
        List<Machine.FanMount> mounts = new ArrayList<>();
        for (int i = 0; i < pump(); i++) {
            mounts.add(machine.mounts().get(i).at(new Duty(duties.at(i))));
        }
        return Changed.pump(
                Changed.mounts(machine, mounts),
                new Machine.PumpAt(machine.water().pump().pump(), new Duty(duties.pumpPercent())));
    }

    /** Its steady state, if it has one. */
    Optional<Steady> solve(Duties duties) {
        return model.solve(machine(duties), air(duties), Nudge.NONE).found();
    }
}
