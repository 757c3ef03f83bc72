package loopwright.loop;

/**
 * A temperature that no machine of a kind can undercut: what a search prunes by.
 *
 * <p><b>Derivation.</b> With radiators in series the heat-weighted mean of their own mean temperatures is the loop's:
 * Σ Q_j·T_j = Q·T, as each takes a piece of the same fall. Let θ_j = Q_j/G_j be each one's mean over the air it breathes. Then
 * Q·T = Σ Q_j·θ_j + Σ Q_j·a_j, where a_j is that air over the room: 0 for those that blow in, A for those that blow out. By
 * Cauchy and Schwarz Σ Q_j²/G_j ≥ Q_in²/G_in + Q_out²/G_out, with sums of conductances. The case is warmer than the room by
 * A = (Q_case + Q_in)/C at least, C being the capacity rate of all air that comes in. With φ = Q_out/Q
 *
 * <pre>T ≥ min over φ in [0, 1] of Q·[(1−φ)²/G_in + φ²/G_out] + φ·(Q_case + Q·(1−φ))/C,</pre>
 *
 * <p>which falls with each of G_in, G_out and C and rises with Q and Q_case, so that upper and lower bounds of those may be
 * put in.
 *
 * <p><b>Units.</b> W, W/K, K over the room.
 */
public final class CoolingBound {

    /** How far crossflow can beat e^−NTU when its coolant cools on the way: see {@link #conductanceWPerK}. */
    private static final double CROSS_GAIN = 0.0105;

    /** What is added to a conductance for the accuracy of roots and curves, relative. */
    private static final double ALLOWANCE = 1e-6;

    private CoolingBound() {}

    /**
     * Returns a lower bound of coolant over room, K; infinite when nothing conducts.
     *
     * @param heatW into the coolant, at least 0
     * @param caseHeatW into the case's air, at least 0
     * @param inWPerK upper bound of what all radiators conduct that blow in
     * @param outWPerK the same of those that blow out
     * @param airWPerK upper bound of the capacity rate of all air that comes in
     */
    public static double leastOverRoomK(
            double heatW, double caseHeatW, double inWPerK, double outWPerK, double airWPerK) {
        if (outWPerK <= 0) {
            return inWPerK > 0 ? heatW / inWPerK : Double.POSITIVE_INFINITY;
        }
        double warm = airWPerK > 0 ? 1 / airWPerK : 0;
        if (inWPerK <= 0) {
            return heatW / outWPerK + caseHeatW * warm;
        }
        // a·φ² + b·φ + c with its least in [0, 1]
        double a = heatW * (1 / inWPerK + 1 / outWPerK - warm);
        double b = -2 * heatW / inWPerK + (caseHeatW + heatW) * warm;
        double c = heatW / inWPerK;
        if (a <= 0) {
            return Math.min(c, a + b + c);
        }
        double share = Math.max(0, Math.min(1, -b / (2 * a)));
        return (a * share + b) * share + c;
    }

    /**
     * Returns an upper bound of a radiator's conductance, coolant mean to incoming air, W/K.
     *
     * <p>Two bounds, of which the smaller. Any arrangement: Q ≤ UA × difference of mean temperatures (the logarithmic mean is
     * never above the arithmetic one), hence 1/G ≥ 1/UA + 1/(2C). Both fluids unmixed: 1/G ≥ (1 − 0.0105·N²)/(C·(1 − e^−N)) for
     * N = UA/C up to 3, whatever the coolant's capacity from C up; found on a grid of the exact effectiveness and tested
     * there. For N above 3 the first bound alone.
     *
     * @param conductanceUAWPerK upper bound of UA
     * @param airWPerK capacity rate of the air through the core
     */
    public static double conductanceWPerK(double conductanceUAWPerK, double airWPerK) {
        if (airWPerK <= 0 || conductanceUAWPerK <= 0) {
            return 0;
        }
        double ntu = conductanceUAWPerK / airWPerK;
        double least = 1 / conductanceUAWPerK + 1 / (2 * airWPerK);
        if (ntu <= 3) {
            least = Math.max(least, (1 - CROSS_GAIN * ntu * ntu) / (airWPerK * -StrictMath.expm1(-ntu)));
        }
        return (1 + ALLOWANCE) / least;
    }
}
