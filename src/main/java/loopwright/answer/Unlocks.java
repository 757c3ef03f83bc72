package loopwright.answer;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.catalog.basis.Pattern;
import loopwright.fit.FitResult;
import loopwright.fit.FoundLayout;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.fit.MountFrame;
import loopwright.fit.Shortfalls.Shortfall;
import loopwright.loop.Band;
import loopwright.rank.ModBill;

/**
 * What each mount takes as delivered, what mods unlock there, and what stays impossible.
 *
 * @param combinations layouts over all mounts with a mod set that no other beats in conductance, labour and cost
 */
public record Unlocks(
        FitResult fits,
        List<AtMount> mounts,
        List<Combination> combinations,
        OptionalDouble asDeliveredOverRoomK,
        Optional<Band> asDeliveredBand) {

    /** A radiator class: what a builder asks for. */
    public record RadiatorClass(Pattern pattern, int thicknessHmm) implements Comparable<RadiatorClass> {
        /** The class of a stack. */
        public static RadiatorClass of(Stack stack) {
            return new RadiatorClass(stack.shape().pattern(), stack.shape().thicknessHmm());
        }

        /** Whether the other is neither larger nor thicker. */
        boolean covers(RadiatorClass other) {
            return other.area() <= area() && other.thicknessHmm <= thicknessHmm;
        }

        private int area() {
            return pattern.fans() * pattern.sizeMm() * pattern.sizeMm();
        }

        @Override
        public int compareTo(RadiatorClass other) {
            int byPattern = pattern.compareTo(other.pattern);
            return byPattern != 0 ? byPattern : Integer.compare(thicknessHmm, other.thicknessHmm);
        }
    }

    /** One mount. */
    public record AtMount(
            MountFrame frame, List<RadiatorClass> asDelivered, List<Unlocked> unlocked, List<Impossible> impossible) {}

    /** A class that mods unlock, with every minimal mod set. */
    public record Unlocked(RadiatorClass stack, List<Way> ways) {}

    /**
     * One minimal mod set for a class.
     *
     * @param stacks the stacks of the class that it makes fit, port ends left out
     * @param costCents material and labour at the brief's rate
     * @param gain how much cooler the best layout with this stack gets than the best one as delivered; absent when
     *     nothing fits as delivered
     */
    public record Way(
            ModSet mods, ModBill bill, long costCents, int days, List<Stack> stacks, Best best, Optional<Gain> gain) {}

    /** The best layout that a way allows: the most conductance over all mounts. */
    public record Best(FoundLayout layout, double conductanceWPerK) {}

    /** Kelvin, and the band they lie in. */
    public record Gain(double gainK, Band band, double conductanceGainWPerK) {}

    /** A class that nothing unlocks. */
    public record Impossible(RadiatorClass stack, Shortfall shortfall) {}

    /** A layout with a mod set. */
    public record Combination(FoundLayout layout, ModSet mods, double conductanceWPerK, ModBill bill, long costCents) {}
}
