package loopwright.loop.water;

/**
 * Anything the coolant has to pass: a tube, a fitting, a block, a radiator, or several of them.
 *
 * <p>Its loss is 0 without flow and rises strictly with flow, which is what makes an operating point unique. It may be
 * infinite: nothing passes then.
 */
@FunctionalInterface
public interface Passage {

    /** A passage that lets nothing through: a closed valve. */
    Passage CLOSED = (flowM3PerS, liquid) -> FlowRange.checked(flowM3PerS) == 0 ? 0 : Double.POSITIVE_INFINITY;

    /**
     * Pressure lost at a flow, Pa.
     *
     * @param flowM3PerS at least 0
     * @throws IllegalArgumentException if the flow is outside its range, or NaN
     */
    double lossPa(double flowM3PerS, LiquidState liquid);

    /** The same for one liquid: cheaper where it is asked for at many flows. */
    default LossCurve in(LiquidState liquid) {
        return flowM3PerS -> lossPa(flowM3PerS, liquid);
    }
}
