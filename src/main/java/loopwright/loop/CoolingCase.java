package loopwright.loop;

import java.util.List;

/**
 * What a cooling model is asked about: heat into the coolant, and everything that takes it out.
 *
 * @param heatW at least 0
 * @param radiators in the chassis's order, which is the order of summation
 */
public record CoolingCase(double heatW, List<SectionRate> radiators) {

    /** Checks the heat. */
    public CoolingCase {
        if (!(heatW >= 0 && Double.isFinite(heatW))) {
            throw new IllegalArgumentException("heat must be at least 0 W but was " + heatW);
        }
        radiators = List.copyOf(radiators);
    }

    /** What all of them conduct together, W/K. */
    public double conductanceWPerK() {
        double sum = 0;
        for (SectionRate each : radiators) {
            sum += each.conductanceWPerK();
        }
        return sum;
    }

    /** Heat that the warmed inlet air keeps in the coolant, W: Σ G·inlet. */
    double inletW() {
        double sum = 0;
        for (SectionRate each : radiators) {
            sum += each.conductanceWPerK() * each.inletOverRoomK();
        }
        return sum;
    }
}
