package loopwright.loop.water;

/**
 * Equal pumps side by side: the same head over all, and each gives its share of the flow.
 *
 * @param pump one of them
 * @param count how many, at least 1
 */
public record PumpsInParallel(HeadCurve pump, int count) implements HeadCurve {

    /** Checks the count. */
    public PumpsInParallel {
        if (!(count >= 1)) {
            throw new IllegalArgumentException("count of pumps must be at least 1 but was " + count);
        }
    }

    @Override
    public double headPa(double flowM3PerS) {
        return pump.headPa(flowM3PerS / count);
    }

    @Override
    public double shutOffPa() {
        return pump.shutOffPa();
    }

    @Override
    public double freeFlowM3PerS() {
        return count * pump.freeFlowM3PerS();
    }
}
