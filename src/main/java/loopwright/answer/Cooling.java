package loopwright.answer;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.fit.FitCase;
import loopwright.fit.Layout;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.fit.Shape;
import loopwright.loop.Band;
import loopwright.loop.CoolingCase;
import loopwright.loop.CoolingModel;
import loopwright.loop.SectionRate;
import loopwright.rank.StackAir;

/**
 * What layouts conduct and how warm the coolant gets, with the best parts of each shape at the speed the trade sizes at.
 *
 * <p>Air leaves through the stack for which that is coolest; the others draw in.
 */
public final class Cooling {

    private final FitCase fitCase;
    private final StackAir air;
    private final CoolingModel model;
    private final double heatW;
    private final Map<Question, Double> known = new HashMap<>();

    /**
     * Cooling of a case.
     *
     * @param heatW heat into the coolant
     */
    public Cooling(FitCase fitCase, CoolingModel model, double heatW) {
        this.fitCase = fitCase;
        this.air = new StackAir(fitCase);
        this.model = model;
        this.heatW = heatW;
    }

    private record Question(int mount, Shape shape, ModSet mods) {}

    /** The heat that is reckoned with, W. */
    public double heatW() {
        return heatW;
    }

    /** What a stack conducts, W/K. */
    public double conductanceWPerK(Stack stack, ModSet mods) {
        return known.computeIfAbsent(
                new Question(stack.frame().index(), stack.shape(), mods), q -> air.ratedConductanceWPerK(stack, mods));
    }

    /** What a layout conducts, W/K. */
    public double conductanceWPerK(Layout layout, ModSet mods) {
        double sum = 0;
        for (Stack stack : layout.stacks()) {
            sum += conductanceWPerK(stack, mods);
        }
        return sum;
    }

    /** The coolest way for the air to go; empty when nothing conducts. */
    public Optional<CoolingCase> coolest(Layout layout, ModSet mods) {
        Optional<CoolingCase> best = Optional.empty();
        for (int out = 0; out < layout.stacks().size(); out++) {
            List<SectionRate> rates = new ArrayList<>();
            for (int i = 0; i < layout.stacks().size(); i++) {
                double rise = i == out ? fitCase.catalog().practice().heat().caseAirRiseK() : 0;
                rates.add(new SectionRate(conductanceWPerK(layout.stacks().get(i), mods), rise));
            }
            CoolingCase candidate = new CoolingCase(heatW, rates);
            OptionalDouble overRoomK = model.coolantOverRoomK(candidate);
            if (overRoomK.isPresent()
                    && (best.isEmpty()
                            || overRoomK.getAsDouble()
                                    < model.coolantOverRoomK(best.get()).getAsDouble())) {
                best = Optional.of(candidate);
            }
        }
        return best;
    }

    /** Coolant over room, K; empty when nothing conducts. */
    public OptionalDouble overRoomK(CoolingCase asked) {
        return model.coolantOverRoomK(asked);
    }

    /** The band that coolant over room lies in. */
    public Optional<Band> band(CoolingCase asked) {
        return model.coolantOverRoomBand(asked);
    }

    /** How much cooler one is than another, with the part of the uncertainty that both share counted once. */
    public Optional<Band> gainBand(CoolingCase before, CoolingCase after) {
        return model.gainBand(before, after);
    }
}
