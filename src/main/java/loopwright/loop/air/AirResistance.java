package loopwright.loop.air;

/**
 * What a path takes to drive air through it: a linear and a quadratic part.
 *
 * <p><b>Units.</b> Pa for a flow in m³/s. The linear part is the friction of small holes and slow air, and keeps flow from
 * scaling as a pure square root of pressure.
 *
 * @param linearPaSPerM3 Pa·s/m³, at least 0
 * @param quadraticPaS2PerM6 Pa·s²/m⁶, at least 0; infinite for a closed path
 */
public record AirResistance(double linearPaSPerM3, double quadraticPaS2PerM6) {

    /** Nothing in the way. */
    public static final AirResistance NONE = new AirResistance(0, 0);

    /** No way through. */
    public static final AirResistance CLOSED = new AirResistance(0, Double.POSITIVE_INFINITY);

    /** Checks the signs. */
    public AirResistance {
        if (!(linearPaSPerM3 >= 0 && linearPaSPerM3 < Double.POSITIVE_INFINITY && quadraticPaS2PerM6 >= 0)) {
            throw new IllegalArgumentException(
                    "resistance must be at least 0 but was " + linearPaSPerM3 + " and " + quadraticPaS2PerM6);
        }
    }

    /** Whether nothing passes. */
    public boolean isClosed() {
        return quadraticPaS2PerM6 == Double.POSITIVE_INFINITY;
    }

    /** Pressure it takes, Pa. */
    public double lossPa(double flowM3PerS) {
        return flowM3PerS * (linearPaSPerM3 + quadraticPaS2PerM6 * flowM3PerS);
    }

    /** How fast that rises with flow, Pa·s/m³. */
    double slopePaSPerM3(double flowM3PerS) {
        return linearPaSPerM3 + 2 * quadraticPaS2PerM6 * flowM3PerS;
    }

    /** The same with losses so many times as high: for what they may be off by. */
    public AirResistance times(double factor) {
        return isClosed() || factor == 1 // exactly: the usual case
                ? this
                : new AirResistance(linearPaSPerM3 * factor, quadraticPaS2PerM6 * factor);
    }

    /** Both, one behind the other. */
    public AirResistance then(AirResistance next) {
        return isClosed() || next.isClosed()
                ? CLOSED
                : new AirResistance(linearPaSPerM3 + next.linearPaSPerM3, quadraticPaS2PerM6 + next.quadraticPaS2PerM6);
    }

    /**
     * Both, side by side.
     *
     * <p>Quadratic parts exactly: 1/√b adds. Linear parts as conductors, 1/a adds, where both have one; together that is
     * exact where one of the parts rules in both. In between the flow reads high, the more the less alike the two are; for a
     * cover's skin beside its slots, which it is for, by less than 4 % from 1 Pa on.
     */
    public AirResistance beside(AirResistance other) {
        if (isClosed()) {
            return other;
        }
        if (other.isClosed()) {
            return this;
        }
        if (quadraticPaS2PerM6 == 0 || other.quadraticPaS2PerM6 == 0) {
            throw new IllegalArgumentException("side by side each path needs a quadratic part");
        }
        double reach = 1 / Math.sqrt(quadraticPaS2PerM6) + 1 / Math.sqrt(other.quadraticPaS2PerM6);
        double linear = linearPaSPerM3 == 0 || other.linearPaSPerM3 == 0
                ? 0
                : 1 / (1 / linearPaSPerM3 + 1 / other.linearPaSPerM3);
        return new AirResistance(linear, 1 / (reach * reach));
    }

    /** The flow that a pressure drives, m³/s, with the sign of the pressure. */
    public double flowM3PerS(double pressurePa) {
        if (isClosed() || pressurePa == 0) {
            return 0;
        }
        double drive = Math.abs(pressurePa);
        // 2p/(a + √(a² + 4bp)): the same as (−a + √…)/2b without the difference of near equals, and right for b = 0.
        return Math.copySign(2 * drive / (linearPaSPerM3 + slopePaSPerM3At(drive)), pressurePa);
    }

    /** How fast that flow rises with a pressure above 0, m³/(s·Pa). */
    double riseM3PerSPerPa(double pressurePa) {
        return 1 / slopePaSPerM3At(pressurePa);
    }

    /** a + 2bq at the flow that a pressure drives. */
    private double slopePaSPerM3At(double pressurePa) {
        return Math.sqrt(linearPaSPerM3 * linearPaSPerM3 + 4 * quadraticPaS2PerM6 * pressurePa);
    }
}
