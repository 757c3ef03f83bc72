package loopwright.loop.water;

/** A round bore: its section. */
final class Bore {

    /** Largest bore taken, m: far above any tube of a computer, so that millimetres given as metres are noticed. */
    private static final double MAX_M = 1;

    private Bore() {}

    /**
     * The bore itself.
     *
     * @throws IllegalArgumentException if it is not above 0 to 1 m
     */
    static double checked(String name, double boreM) {
        if (!(boreM > 0 && boreM <= MAX_M)) {
            throw new IllegalArgumentException(name + " must be above 0 to 1 m but was " + boreM);
        }
        return boreM;
    }

    /** Area of the section, m². */
    static double areaM2(double boreM) {
        return Math.PI / 4 * boreM * boreM;
    }

    /** Pressure of the flow's speed in the bore over the flow's square, ρ/(2A²), Pa/(m³/s)². */
    static double dynamicPaPerFlow2(double boreM, LiquidState liquid) {
        double areaM2 = areaM2(boreM);
        return 0.5 * liquid.densityKgPerM3() / (areaM2 * areaM2);
    }
}
