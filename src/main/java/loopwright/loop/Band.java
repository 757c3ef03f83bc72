package loopwright.loop;

/**
 * Where a temperature difference lies: one standard deviation to each side, K. Twice as wide holds about 95 %.
 *
 * @param lowK lower end
 * @param highK upper end, not below the lower
 */
public record Band(double lowK, double highK) {

    /** Checks the order. */
    public Band {
        if (!(lowK <= highK)) {
            throw new IllegalArgumentException("a band runs upwards but was " + lowK + " to " + highK + " K");
        }
    }

    /** The band around a value, so far to each side. */
    static Band around(double valueK, double plusMinusK) {
        return new Band(valueK - plusMinusK, valueK + plusMinusK);
    }

    /** Whether the value is in it. */
    public boolean contains(double valueK) {
        return lowK <= valueK && valueK <= highK;
    }

    /** Half its width, K. */
    public double halfK() {
        return (highK - lowK) / 2;
    }
}
