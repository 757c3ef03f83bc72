package loopwright.loop.water;

/** What a passage takes of the pressure, for one liquid: {@link Passage} with everything worked out that the flow is not in. */
@FunctionalInterface
public interface LossCurve {

    /**
     * Pressure lost at a flow, Pa: 0 without flow, and strictly rising with it.
     *
     * @param flowM3PerS at least 0
     */
    double lossPa(double flowM3PerS);
}
