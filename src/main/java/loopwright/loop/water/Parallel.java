package loopwright.loop.water;

import java.util.ArrayList;
import java.util.List;

/**
 * Passages side by side: the same loss over all, and their flows add.
 *
 * <p><b>Accuracy.</b> 1e-12 of the loss; the branches' flows add to the whole to rounding.
 *
 * <p>Finding the split takes some hundred evaluations of each branch, so it is not for the inmost of a search.
 *
 * @param passages at least one, in any order
 */
public record Parallel(List<Passage> passages) implements Passage {

    /** Checks that there is one. */
    public Parallel {
        if (passages.isEmpty()) {
            throw new IllegalArgumentException("passages in parallel need a passage");
        }
        passages = List.copyOf(passages);
    }

    @Override
    public double lossPa(double flowM3PerS, LiquidState liquid) {
        return in(liquid).lossPa(flowM3PerS);
    }

    @Override
    public LossCurve in(LiquidState liquid) {
        LossCurve[] branches = Series.curves(passages, liquid);
        return flowM3PerS -> commonLossPa(branches, FlowRange.checked(flowM3PerS));
    }

    /**
     * Flow through each branch, m³/s, in the passages' order.
     *
     * @param flowM3PerS the whole flow, at least 0
     * @throws IllegalArgumentException if the flow is outside its range, or above 0 with every branch closed
     */
    public List<Double> branchFlowsM3PerS(double flowM3PerS, LiquidState liquid) {
        LossCurve[] branches = Series.curves(passages, liquid);
        double lossPa = commonLossPa(branches, FlowRange.checked(flowM3PerS));
        if (lossPa == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException("every branch is closed to " + flowM3PerS + " m³/s: " + this);
        }
        List<Double> flows = new ArrayList<>();
        double sum = 0;
        for (LossCurve branch : branches) {
            double flow = flowM3PerS(branch, lossPa, flowM3PerS);
            sum += flow;
            flows.add(flow);
        }
        double scale = sum > 0 ? flowM3PerS / sum : 1;
        flows.replaceAll(flow -> flow * scale);
        return List.copyOf(flows);
    }

    /** The loss at which the branches' flows add to the whole: not above what any branch takes of it alone. */
    private double commonLossPa(LossCurve[] branches, double flowM3PerS) {
        double alonePa = Double.POSITIVE_INFINITY;
        for (LossCurve branch : branches) {
            alonePa = Math.min(alonePa, branch.lossPa(flowM3PerS));
        }
        if (branches.length == 1 || flowM3PerS == 0 || alonePa == Double.POSITIVE_INFINITY) {
            return alonePa;
        }
        return Crossing.find(
                lossPa -> {
                    double left = flowM3PerS;
                    for (LossCurve branch : branches) {
                        left -= flowM3PerS(branch, lossPa, flowM3PerS);
                    }
                    return left;
                },
                alonePa,
                alonePa / branches.length,
                () -> flowM3PerS + " m³/s through " + this);
    }

    /** What one branch lets through at a loss, not above the whole flow. */
    private double flowM3PerS(LossCurve branch, double lossPa, double wholeM3PerS) {
        double mostPa = branch.lossPa(wholeM3PerS);
        if (lossPa == 0 || mostPa <= lossPa) {
            return lossPa == 0 ? 0 : wholeM3PerS;
        }
        return Crossing.find(
                flow -> Math.max(lossPa - branch.lossPa(flow), -Double.MAX_VALUE),
                wholeM3PerS,
                wholeM3PerS * Math.sqrt(lossPa / mostPa),
                () -> lossPa + " Pa over a branch of " + this);
    }
}
