package loopwright.loop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.brief.BriefLimits.HeatLimits;
import loopwright.catalog.standard.Practice;
import loopwright.quantity.Units;

/**
 * How hot parts under blocks get: the coolant at the block, and the block's step at the flow through it.
 *
 * <p><b>Units.</b> °C, K/W. <b>Valid for</b> the resistance of the sheet at its rated flow; the film's part of it grows as flow
 * falls, R·(1 − s + s·(Q/Q0)^−n). Share and exponent are practice: below 1 L/min the step grows by 1 to 3 K a halving.
 */
public final class Junctions {

    private Junctions() {}

    /** A part's temperature. */
    public record Junction(String name, double temperatureC, double stepK) {}

    /** The parts under blocks, in loop order. */
    public static List<Junction> of(Machine machine, Steady state, Practice practice) {
        return of(machine, state, practice, Nudge.NONE);
    }

    /** The same with an input off its value: a part's heat and a block's resistance act on the step, too. */
    public static List<Junction> of(Machine machine, Steady state, Practice practice, Nudge nudge) {
        List<Junction> out = new ArrayList<>();
        for (Machine.BlockAt block : machine.water().blocks()) {
            for (Steady.Stop stop : state.stops()) {
                if (stop.name().equals(block.name())) {
                    double step = block.heatW()
                            * nudge.factor(Scatter.heat(block.part()), Scatter.HEAT)
                            * nudge.factor(Scatter.block(block), Scatter.BLOCK)
                            * resistanceKPerW(
                                    block.flow().resistanceKPerW(),
                                    stop.flowM3PerS(),
                                    practice.heat().block());
                    out.add(new Junction(block.name(), stop.meanC() + step, step));
                }
            }
        }
        return out;
    }

    /** A block's resistance at a flow. */
    static double resistanceKPerW(double ratedKPerW, double flowM3PerS, Practice.BlockStep step) {
        double share = Units.lPerMin(flowM3PerS) / step.ratedLPerMin();
        return ratedKPerW * (1 - step.flowShare() + step.flowShare() * StrictMath.pow(share, -step.exponent()));
    }

    /** Whether parts and the air inside keep a brief's limits. */
    public static boolean keep(Machine machine, Steady state, Practice practice, HeatLimits limits) {
        if (limits.caseMaxC().isPresent() && state.caseC() > limits.caseMaxC().get()) {
            return false;
        }
        for (Junction junction : of(machine, state, practice)) {
            Optional<Double> limit =
                    junction.name().equals(Machine.PROCESSOR) ? limits.processorMaxC() : limits.cardMaxC();
            if (limit.isPresent() && junction.temperatureC() > limit.get()) {
                return false;
            }
        }
        return true;
    }
}
