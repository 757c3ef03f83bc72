package loopwright.loop.water;

/**
 * The operating point of a loop: the flow at which its pumps' head is what its passages take.
 *
 * <p><b>Valid for</b> a head that never rises with flow and a loss that rises strictly: then there is exactly one such flow.
 *
 * <p><b>Accuracy.</b> 1e-12 of the flow, in arithmetic; as sure as the two curves in fact.
 */
public sealed interface FlowBalance {

    /**
     * The coolant flows.
     *
     * @param flowM3PerS above 0, m³/s
     * @param headPa what the pumps give and the passages take, Pa
     */
    record Flowing(double flowM3PerS, double headPa) implements FlowBalance {}

    /**
     * The coolant stands.
     *
     * @param why in a sentence without a full stop
     */
    record Still(String why) implements FlowBalance {}

    /** The operating point of pumps and a passage with this coolant. */
    static FlowBalance find(HeadCurve pumps, Passage passage, LiquidState liquid) {
        return find(pumps, passage, liquid, 0);
    }

    /**
     * The same point, found faster from a flow near it.
     *
     * @param guessM3PerS a flow near the answer, as that of a slightly other coolant; one that no answer can have is
     *     passed over
     * @throws IllegalStateException if no point is found, as a curve breaks its promise: with evaluations, what head is
     *     left over, and inputs
     */
    static FlowBalance find(HeadCurve pumps, Passage passage, LiquidState liquid, double guessM3PerS) {
        Surplus surplus = new Surplus(pumps, passage.in(liquid));
        double freeM3PerS = surplus.freeM3PerS();
        if (!(surplus.shutOffPa() > 0 && freeM3PerS > 0)) {
            return new Still("the pump has no head");
        }
        boolean usable = guessM3PerS > 0 && guessM3PerS < freeM3PerS;
        double flowM3PerS = Crossing.find(
                surplus,
                freeM3PerS,
                usable ? guessM3PerS : surplus.likelyM3PerS(),
                () -> pumps + " against " + passage + " with " + liquid);
        if (flowM3PerS <= Surplus.NOTHING * freeM3PerS) {
            return new Still("the passage lets nothing through");
        }
        return new Flowing(flowM3PerS, pumps.headPa(flowM3PerS));
    }
}
