package loopwright.power.header;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Currents of files in whole milliamperes, half rounded up. */
final class MilliAmps {

    private static final int DECIMALS = 3;

    private MilliAmps() {}

    /** Of a current, A. */
    static int of(double amps) {
        return of(amps, 1);
    }

    /** Of a current times a factor, rounded once. */
    static int of(double amps, double factor) {
        return BigDecimal.valueOf(amps)
                .multiply(BigDecimal.valueOf(factor))
                .movePointRight(DECIMALS)
                .setScale(0, RoundingMode.HALF_UP)
                .intValueExact();
    }

    /** What a part draws while it starts: what its sheet says, else a factor on what it draws at speed. */
    static int starting(double startA, double steadyA, double factor) {
        return startA > 0 ? of(startA) : of(steadyA, factor);
    }
}
