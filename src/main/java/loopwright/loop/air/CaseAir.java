package loopwright.loop.air;

import java.util.ArrayList;
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
        double insidePa = insidePa(net, least, most);
        net.atPa(insidePa);
        return new CaseFlow(this, insidePa, net.coreFlows());
    }

    /** At the least pressure no fan blows out any more, at the most none blows in: where all else is closed, it stays there. */
    private double insidePa(Net net, double least, double most) {
        if (!lets(AirDirection.IN)) {
            return least;
        }
        if (most == least || !lets(AirDirection.OUT)) { // exactly: there are no fans
            return most;
        }
        return Net.pressurePa(
                BracketedRoot.of("pressure inside the case", net, -Math.sqrt(-least), Math.sqrt(most), 0));
    }

    /** Whether air can pass some way: by an opening, or by fans that blow so. */
    private boolean lets(AirDirection direction) {
        for (AirResistance opening : openings) {
            if (!opening.isClosed()) {
                return true;
            }
        }
        for (AirBranch branch : branches) {
            if (branch.direction() == direction && !branch.way().path().isClosed()) {
                return true;
            }
        }
        return false;
    }

    /**
     * Flow in less flow out, over the root of the pressure inside, with its sign: over the pressure itself an opening's flow
     * would rise without end at 0. Remembers each branch's flow as the next guess.
     */
    private static final class Net implements BracketedRoot.Falling {

        /** Least root that an opening's slope is taken at, √Pa: as good as its limit at 0, which is 0/0. */
        private static final double ROOT_LEAST = 1e-9;

        private final CaseAir air;
        private final double[] coreFlows;

        Net(CaseAir air) {
            this.air = air;
            this.coreFlows = new double[air.branches.size()];
        }

        static double pressurePa(double root) {
            return root * Math.abs(root);
        }

        List<Double> coreFlows() {
            List<Double> out = new ArrayList<>(coreFlows.length);
            for (double flow : coreFlows) {
                out.add(flow);
            }
            return out;
        }

        @Override
        public double at(double root) {
            return atPa(pressurePa(root));
        }

        double atPa(double insidePa) {
            double sum = 0;
            for (int i = 0; i < coreFlows.length; i++) {
                AirBranch branch = air.branches.get(i);
                coreFlows[i] = branch.coreFlowM3PerS(insidePa, coreFlows[i]);
                sum -= branch.direction().help() * branch.wholeM3PerS(coreFlows[i]);
            }
            for (AirResistance opening : air.openings) {
                sum -= opening.flowM3PerS(insidePa);
            }
            return sum;
        }

        @Override
        public double slopeAt(double root) {
            double size = Math.max(Math.abs(root), ROOT_LEAST);
            double sum = 0;
            for (int i = 0; i < coreFlows.length; i++) {
                sum -= air.branches.get(i).riseM3PerSPerPa(coreFlows[i]);
            }
            for (AirResistance opening : air.openings) {
                sum -= opening.riseM3PerSPerPa(size * size);
            }
            return 2 * size * sum; // by the chain rule: the pressure rises by 2·|root| for the root's 1
        }
    }
}
