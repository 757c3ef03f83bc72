package loopwright.loop.water;

/**
 * A sharp step of the bore: into a wider one, into a narrower one, out of a tank, into a tank.
 *
 * <p><b>Valid for</b> turbulent flow. In laminar flow the true loss is two to three times as large; at the flows of a loop
 * that is some tens of Pa, and a loss that jumped would no longer rise with flow.
 *
 * <p><b>Accuracy.</b> Widening: exact for flat profiles. Narrowing: ±15 % between compilations.
 *
 * <p><b>Source.</b> Widening: Borda and Carnot, (1 − β²)². Narrowing: [Rennels2012], sharp-edged. Both on the speed in the
 * narrower bore, β is narrower over wider.
 *
 * @param fromBoreM bore the liquid comes from, above 0 m; infinite: a tank
 * @param toBoreM bore it goes to, above 0 m; infinite: a tank
 */
public record SuddenChange(double fromBoreM, double toBoreM) implements Passage {

    /** Bore of a tank: without end. */
    public static final double TANK = Double.POSITIVE_INFINITY;

    /** Contraction of the jet behind a sharp edge, dimensionless, [Rennels2012]. */
    private static final double JET = 0.622;

    /** How the jet depends on β², dimensionless, [Rennels2012]. */
    private static final double JET_BETA2 = 0.215;

    /** How the jet depends on β⁵, dimensionless, [Rennels2012]. */
    private static final double JET_BETA5 = 0.785;

    /** Loss ahead of the edge, dimensionless, [Rennels2012]. */
    private static final double AHEAD = 0.0696;

    /** Checks the ranges. */
    public SuddenChange {
        if (!(fromBoreM > 0 && toBoreM > 0 && fromBoreM != toBoreM)) {
            throw new IllegalArgumentException(
                    "a step needs two bores above 0 m that differ but was " + fromBoreM + " to " + toBoreM);
        }
        Bore.checked("the narrower bore", Math.min(fromBoreM, toBoreM));
    }

    /** Out of a tank into a bore that begins flush and sharp. */
    public static SuddenChange inlet(double boreM) {
        return new SuddenChange(TANK, boreM);
    }

    /** Out of a bore into a tank. */
    public static SuddenChange exit(double boreM) {
        return new SuddenChange(boreM, TANK);
    }

    @Override
    public double lossPa(double flowM3PerS, LiquidState liquid) {
        double flow = FlowRange.checked(flowM3PerS);
        double narrowM = Math.min(fromBoreM, toBoreM);
        return lossCoefficient() * Bore.dynamicPaPerFlow2(narrowM, liquid) * flow * flow;
    }

    /** Loss over the dynamic pressure in the narrower bore, dimensionless. */
    double lossCoefficient() {
        if (fromBoreM < toBoreM) {
            double beta = fromBoreM / toBoreM;
            double widened = 1 - beta * beta;
            return widened * widened;
        }
        double beta2 = toBoreM / fromBoreM * (toBoreM / fromBoreM);
        double beta5 = beta2 * beta2 * (toBoreM / fromBoreM);
        double jet = 1 + JET * (1 - JET_BETA2 * beta2 - JET_BETA5 * beta5);
        return AHEAD * (1 - beta5) * jet * jet + (jet - 1) * (jet - 1);
    }
}
