package loopwright.loop.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.loop.Duty;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.MountSound;
import loopwright.loop.SoundPower;
import loopwright.loop.Steady;

/**
 * Speed against temperature: what one duty for all fans gives, and the quietest duties that hold limits.
 *
 * <p><b>Units.</b> Duties in whole percent of full speed, sound in dB(A) at 1 m.
 *
 * <p><b>Valid for</b> the range of {@link MachineModel} and {@link MountSound}: steady load, no tones.
 *
 * <p><b>Accuracy.</b> The quietest duties are exact for the model, to the percent ({@code QuietSearch}); many others near them
 * are a hundredth of a decibel louder. Levels are weak in themselves, how much quieter one is than the other is better.
 */
public final class Speeds {

    private Speeds() {}

    /** The machine with all fans at each of these duties, and the pump as it is. */
    public static List<SpeedPoint> curve(MachineModel model, Machine machine, List<Integer> dutyPercents) {
        List<SpeedPoint> out = new ArrayList<>();
        for (int percent : dutyPercents) {
            Machine at = Changed.mounts(
                    machine,
                    machine.mounts().stream().map(m -> m.at(new Duty(percent))).toList());
            out.add(new SpeedPoint(percent, sound(at), model.solve(at)));
        }
        return out;
    }

    /** All that turns in a machine. */
    public static SoundPower sound(Machine machine) {
        SoundPower sum = MountSound.of(machine.water().pump());
        for (Machine.FanMount mount : machine.mounts()) {
            sum = sum.plus(MountSound.of(mount));
        }
        return sum;
    }

    /**
     * The quietest duties that hold limits, one for each mount and one for the pump.
     *
     * @return empty when none hold, not even at full speed
     */
    public static Optional<Quiet> quietest(MachineModel model, Machine machine, SpeedLimits limits) {
        Motors motors = new Motors(model, machine);
        return new QuietSearch(motors, limits).find().map(duties -> {
            Machine quiet = motors.machine(duties);
            Steady state = motors.solve(duties).orElseThrow();
            SoundPower sound = motors.sound(duties);
            return new Quiet(duties, quiet, state, sound, levelDBA(sound(machine)) - levelDBA(sound));
        });
    }

    private static double levelDBA(SoundPower sound) {
        return sound.levelDBA().orElse(Double.NEGATIVE_INFINITY);
    }
}
