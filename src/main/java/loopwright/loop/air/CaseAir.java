package loopwright.loop.air;

import java.util.List;
import loopwright.loop.BracketedRoot;

/**
 * All air of a case: mounts with fans and passive openings, linked through the pressure inside.
 *
 * <p>What is blown in leaves by other fans or by passive openings: one root, as the net flow in falls with the pressure.
 *
 * <p><b>Units.</b> m³/s, Pa gauge.
 *
 * <p><b>Valid for</b> one well-mixed inside; the room's air density everywhere. <b>Accuracy.</b> The balance closes to
 * 1e-12 of the flow; the curves and coefficients that go in are good for 10 to 20 %.
 */
public final class CaseAir {

    private final List<AirBranch> branches;
    private final List<AirResistance> openings;

    /**
     * The air of a case.
     *
     * @param openings passive ways to the room, in the chassis's order
     */
    public CaseAir(List<AirBranch> branches, List<AirResistance> openings) {
        this.branches = List.copyOf(branches);
        this.openings = List.copyOf(openings);
    }

    /** The mounts with fans. */
    public List<AirBranch> branches() {
        return branches;
    }

    /** The passive openings. */
    public List<AirResistance> openings() {
        return openings;
    }

    /** Finds the balance. */
    public CaseFlow balance() {
        double most = 0;
        double least = 0;
        for (AirBranch branch : branches) {
            double shutOff = branch.fans().shutOffPa();
            most = branch.direction() == AirDirection.IN ? Math.max(most, shutOff) : most;
            least = branch.direction() == AirDirection.OUT ? Math.min(least, -shutOff) : least;
        }
        Net net = new Net(this);
        double insidePa = most > least ? root(net, least, most) : 0;
        net.at(insidePa);
        return new CaseFlow(this, insidePa, net.coreFlows());
    }

    private static double root(Net net, double least, double most) {
        if (net.at(least) <= 0) { // only fans that blow out, and no other way in
            return least;
        }
        if (net.at(most) >= 0) {
            return most;
        }
        return BracketedRoot.of("pressure inside the case", net, least, most, 0);
    }

    /** Flow in less flow out, at a pressure inside; remembers each branch's flow as the next guess. */
    private static final class Net implements BracketedRoot.Falling {
        private final CaseAir air;
        private final double[] coreFlows;

        Net(CaseAir air) {
            this.air = air;
            this.coreFlows = new double[air.branches.size()];
        }

        List<Double> coreFlows() {
            return java.util.Arrays.stream(coreFlows).boxed().toList();
        }

        @Override
        public double at(double insidePa) {
            double sum = 0;
            for (int i = 0; i < coreFlows.length; i++) {
                AirBranch branch = air.branches.get(i);
                coreFlows[i] = branch.coreFlowM3PerS(insidePa, coreFlows[i]);
                sum -= branch.direction().help() * branch.wholeM3PerS(coreFlows[i]);
            }
            for (int i = 0; i < air.openings.size(); i++) {
                sum -= air.openings.get(i).flowM3PerS(insidePa);
            }
            return sum;
        }

        @Override
        public double slopeAt(double insidePa) {
            double sum = 0;
            for (int i = 0; i < coreFlows.length; i++) {
                sum -= air.branches.get(i).riseM3PerSPerPa(coreFlows[i]);
            }
            for (int i = 0; i < air.openings.size(); i++) {
                AirResistance opening = air.openings.get(i);
                if (!opening.isClosed()) {
                    sum -= 1 / Math.max(opening.slopePaSPerM3(Math.abs(opening.flowM3PerS(insidePa))), SLOPE_LEAST);
                }
            }
            return sum;
        }
    }

    /** Least slope of an opening, Pa·s/m³: keeps a step finite where a purely quadratic one carries nothing. */
    private static final double SLOPE_LEAST = 1e-6;
}
