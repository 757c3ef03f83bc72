package loopwright.rank;

/** Temperatures as builds are compared in: whole hundredths of a kelvin, half up. */
final class Centi {

    private static final double CENTI = 100;

    private Centi() {}

    static int of(double kelvin) {
        return (int) Math.min(Integer.MAX_VALUE, Math.floor(kelvin * CENTI + 0.5));
    }
}
