package loopwright.loop.study;

import java.util.OptionalDouble;

/**
 * How the coolant's mean temperature goes on from a moment: towards an end as e^(−t/τ), or straight on where nothing takes the
 * heat out.
 *
 * <p><b>Units.</b> °C, K/s, s.
 *
 * <p><b>Valid for</b> one well-mixed lump, so not within the first turn of the coolant; see {@link WarmUp}. Boiling, or what a
 * board does to save itself, is not in it.
 *
 * <p><b>Source.</b> Lumped capacitance, [IncroperaDeWitt2007] section 5.1: C·dT/dt = G·(T∞ − T).
 *
 * @param startC at the moment itself
 * @param firstRiseKPerS how fast it rises then; below 0 where it cools
 * @param timeConstantS after which 63 % of the way is done; empty: straight on
 */
public record Course(double startC, double firstRiseKPerS, OptionalDouble timeConstantS) {

    /** Ten minutes, s: what a person waits before the first look. */
    private static final double TEN_MINUTES_S = 600;

    /** Checks the time constant. */
    public Course {
        if (timeConstantS.isPresent() && !(timeConstantS.getAsDouble() > 0)) {
            throw new IllegalArgumentException(
                    "time constant must be above 0 s but was " + timeConstantS.getAsDouble());
        }
    }

    /** Where it ends, °C; empty when it does not. */
    public OptionalDouble endC() {
        return timeConstantS.isPresent()
                ? OptionalDouble.of(startC + firstRiseKPerS * timeConstantS.getAsDouble())
                : OptionalDouble.empty();
    }

    /**
     * Where it is after a while, °C.
     *
     * @param seconds at least 0
     */
    public double atC(double seconds) {
        if (!(seconds >= 0)) {
            throw new IllegalArgumentException("seconds must be at least 0 but was " + seconds);
        }
        if (timeConstantS.isEmpty()) {
            return startC + firstRiseKPerS * seconds;
        }
        double tau = timeConstantS.getAsDouble();
        return startC - firstRiseKPerS * tau * StrictMath.expm1(-seconds / tau);
    }

    /** Where it is after ten minutes, °C. */
    public double afterTenMinutesC() {
        return atC(TEN_MINUTES_S);
    }

    /** When it passes a limit, s; 0 if it is past it already, empty if it never does. */
    public OptionalDouble secondsUntil(double limitC) {
        if (startC > limitC) {
            return OptionalDouble.of(0);
        }
        if (timeConstantS.isEmpty()) {
            return firstRiseKPerS > 0 ? OptionalDouble.of((limitC - startC) / firstRiseKPerS) : OptionalDouble.empty();
        }
        double tau = timeConstantS.getAsDouble();
        double wayK = firstRiseKPerS * tau;
        return limitC - startC < wayK
                ? OptionalDouble.of(-tau * StrictMath.log1p(-(limitC - startC) / wayK))
                : OptionalDouble.empty();
    }
}
