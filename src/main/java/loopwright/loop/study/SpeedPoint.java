package loopwright.loop.study;

import java.util.OptionalDouble;
import loopwright.loop.SoundPower;
import loopwright.loop.Steady;
import loopwright.loop.SteadyState;

/**
 * A machine with all fans at one duty.
 *
 * @param dutyPercent of every fan
 * @param sound of fans and pump
 */
public record SpeedPoint(int dutyPercent, SoundPower sound, SteadyState state) {

    /** Coolant over room, K; empty without a steady state. */
    public OptionalDouble coolantOverRoomK() {
        return state instanceof Steady steady ? OptionalDouble.of(steady.coolantOverRoomK()) : OptionalDouble.empty();
    }

    /** Air that fans blow in less air that fans blow out, m³/s; empty without a steady state. */
    public OptionalDouble fanSurplusM3PerS() {
        return state instanceof Steady steady
                ? OptionalDouble.of(steady.air().fanInM3PerS() - steady.air().fanOutM3PerS())
                : OptionalDouble.empty();
    }
}
