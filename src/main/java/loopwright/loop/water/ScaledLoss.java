package loopwright.loop.water;

/**
 * A passage whose losses are so many times as high: for what they may be off by.
 *
 * @param factor above 0, dimensionless
 */
public record ScaledLoss(Passage passage, double factor) implements Passage {

    /** Checks the factor. */
    public ScaledLoss {
        if (!(factor > 0 && factor < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("factor must be above 0 but was " + factor);
        }
    }

    @Override
    public double lossPa(double flowM3PerS, LiquidState liquid) {
        return factor * passage.lossPa(flowM3PerS, liquid);
    }

    @Override
    public LossCurve in(LiquidState liquid) {
        LossCurve curve = passage.in(liquid);
        return flowM3PerS -> factor * curve.lossPa(flowM3PerS);
    }
}
