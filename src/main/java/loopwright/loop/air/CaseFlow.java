package loopwright.loop.air;

import java.util.List;

/**
 * The air of a case in balance.
 *
 * @param insidePa gauge pressure inside
 * @param coreFlowsM3PerS air through each branch's core, in the order of the branches
 */
public record CaseFlow(CaseAir air, double insidePa, List<Double> coreFlowsM3PerS) {

    /** Copies. */
    public CaseFlow {
        coreFlowsM3PerS = List.copyOf(coreFlowsM3PerS);
    }

    /** Air through a branch's core, m³/s. */
    public double coreFlowM3PerS(int branch) {
        return coreFlowsM3PerS.get(branch);
    }

    /** Air through a whole branch, m³/s. */
    public double wholeM3PerS(int branch) {
        return air.branches().get(branch).wholeM3PerS(coreFlowsM3PerS.get(branch));
    }

    /** Air through a passive opening, out of the case, m³/s; below 0 where it comes in. */
    public double openingM3PerS(int opening) {
        return air.openings().get(opening).flowM3PerS(insidePa);
    }

    /** All air that comes in by fans, m³/s. */
    public double fanInM3PerS() {
        return byFans(AirDirection.IN);
    }

    /** All air that leaves by fans, m³/s. */
    public double fanOutM3PerS() {
        return byFans(AirDirection.OUT);
    }

    private double byFans(AirDirection direction) {
        double sum = 0;
        for (int i = 0; i < coreFlowsM3PerS.size(); i++) {
            sum += air.branches().get(i).direction() == direction ? wholeM3PerS(i) : 0;
        }
        return sum;
    }

    /** All air that comes into the case, by fans and openings, m³/s. */
    public double inM3PerS() {
        double sum = fanInM3PerS();
        for (int i = 0; i < air.openings().size(); i++) {
            sum += Math.max(0, -openingM3PerS(i));
        }
        return sum;
    }

    /** All air that leaves the case, m³/s. */
    public double outM3PerS() {
        double sum = fanOutM3PerS();
        for (int i = 0; i < air.openings().size(); i++) {
            sum += Math.max(0, openingM3PerS(i));
        }
        return sum;
    }
}
