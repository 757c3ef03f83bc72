package loopwright.loop.study;

import java.util.OptionalDouble;

/**
 * A block whose coolant stands still: it heats up alone.
 *
 * <p><b>Units.</b> °C, K/s.
 *
 * <p><b>Valid for</b> the seconds after the pump stops, at full load. Block and its own coolant are one lump and the step from
 * it to the part stays; metal near the chip is ahead of the rest, what the coolant's own lift and the board carry off is left
 * out. Good to a factor of two.
 *
 * @param name whose heat it takes
 * @param riseKPerS how fast it heats up
 * @param junctionC the part's temperature as the pump stops
 */
public record StandingBlock(String name, double riseKPerS, double junctionC) {

    /** Seconds until the part reaches a limit; 0 if it is past it already, empty without heat. */
    public OptionalDouble secondsUntil(double limitC) {
        if (junctionC > limitC) {
            return OptionalDouble.of(0);
        }
        return riseKPerS > 0 ? OptionalDouble.of((limitC - junctionC) / riseKPerS) : OptionalDouble.empty();
    }
}
