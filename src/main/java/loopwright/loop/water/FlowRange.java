package loopwright.loop.water;

/** The flows there are: from 0, finite. */
final class FlowRange {

    private FlowRange() {}

    /**
     * The flow itself.
     *
     * @throws IllegalArgumentException if it is negative, infinite or NaN
     */
    static double checked(double flowM3PerS) {
        if (!(flowM3PerS >= 0 && flowM3PerS <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("flow must be at least 0 m³/s and finite but was " + flowM3PerS);
        }
        return flowM3PerS;
    }
}
