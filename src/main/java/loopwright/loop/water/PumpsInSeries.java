package loopwright.loop.water;

import java.util.List;

/**
 * Pumps one behind the other: the same flow through all, and their heads add.
 *
 * <p>Beyond its own free flow a pump adds nothing; that it then holds the others back is left out, and so is what one that
 * stands resists.
 *
 * @param pumps at least one, in any order
 */
public record PumpsInSeries(List<HeadCurve> pumps) implements HeadCurve {

    /** Checks that there is one. */
    public PumpsInSeries {
        if (pumps.isEmpty()) {
            throw new IllegalArgumentException("pumps in series need a pump");
        }
        pumps = List.copyOf(pumps);
    }

    @Override
    public double headPa(double flowM3PerS) {
        double sumPa = 0;
        for (HeadCurve each : pumps) {
            sumPa += each.headPa(flowM3PerS);
        }
        return sumPa;
    }

    @Override
    public double shutOffPa() {
        double sumPa = 0;
        for (HeadCurve each : pumps) {
            sumPa += each.shutOffPa();
        }
        return sumPa;
    }

    @Override
    public double freeFlowM3PerS() {
        double most = 0;
        for (HeadCurve each : pumps) {
            // One without head drives nothing, however far its curve goes.
            most = each.shutOffPa() > 0 ? Math.max(most, each.freeFlowM3PerS()) : most;
        }
        return most;
    }
}
