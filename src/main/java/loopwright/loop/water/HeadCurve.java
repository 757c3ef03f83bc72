package loopwright.loop.water;

/** Anything that drives the coolant: a head that never rises with flow and ends at the free flow. */
public interface HeadCurve {

    /**
     * Head at a flow, as pressure, Pa: at least 0, and 0 from the free flow on.
     *
     * @param flowM3PerS at least 0
     */
    double headPa(double flowM3PerS);

    /** Head against a closed passage, Pa: the most there is. */
    double shutOffPa();

    /** Flow against no resistance, m³/s: where the head has come down to 0. */
    double freeFlowM3PerS();
}
