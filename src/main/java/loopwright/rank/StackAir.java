package loopwright.rank;

import java.util.OptionalDouble;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.part.Cover;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import loopwright.fit.FitCase;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.loop.AirPath;
import loopwright.loop.Duty;
import loopwright.loop.FanBank;
import loopwright.loop.RadiatorAir;

/** The air that a stack gets, and what its radiator conducts with it. */
public final class StackAir {

    /**
     * The speed the trade sizes radiators at: so many watts a section at 10 K "at 1300 rpm"; common practice, no source.
     */
    private static final double RATED_SPEED_RPM = 1300;

    /** Square centimetres in the square of a hundredth of a millimetre: 1e-6. */
    private static final double CM2_PER_HMM2 = 1e-6;

    private final FitCase fitCase;

    /** The air of a case. */
    public StackAir(FitCase fitCase) {
        this.fitCase = fitCase;
    }

    /** What air passes on its way through a mount's panel, with a mod set. */
    public AirPath path(Mount mount, Pattern pattern, ModSet mods) {
        double panel = fitCase.openings().freeArea(mount, pattern, mods);
        double filter = fitCase.openings().filterShare(mount, mods);
        OptionalDouble cover = fitCase.openings()
                .cover(mount, mods)
                .map(c -> fitCase.catalog().part(Cover.class, c.cover()))
                .map(c -> OptionalDouble.of(outlet(c, pattern)))
                .orElse(OptionalDouble.empty());
        return new AirPath(panel, filter < 1 ? OptionalDouble.of(filter) : OptionalDouble.empty(), cover);
    }

    /** Open share of a cover: its skin above the fans, and its side slots over the area that the fans sweep. */
    private double outlet(Cover cover, Pattern pattern) {
        double ringHmm = fitCase.catalog().standards().fans().stream()
                .filter(f -> f.sizeMm() == pattern.sizeMm())
                .findFirst()
                .map(f -> (double) f.ringMm().valueHmm())
                .orElse(pattern.sizeMm() * 100.0);
        double sweptCm2 = pattern.fans() * Math.PI / 4 * ringHmm * ringHmm * CM2_PER_HMM2;
        return Math.min(1, cover.skin().freeArea() + cover.skin().sideSlotAreaCm2() / sweptCm2);
    }

    /**
     * What the best parts of a stack's shape conduct at the speed the trade sizes at, W/K: 1300 rpm, or full speed for a
     * fan that is slower.
     */
    public double ratedConductanceWPerK(Stack stack, ModSet mods) {
        AirPath path = path(stack.frame().mount(), stack.shape().pattern(), mods);
        double best = 0;
        for (Radiator radiator : fitCase.shapes().radiatorsOf(stack.shape())) {
            for (Fan fan : fitCase.shapes().fansOf(stack.shape())) {
                double percent = Math.min(100, 100 * RATED_SPEED_RPM / fan.air().speedMaxRpm());
                FanBank bank = new FanBank(fan, stack.shape().arrangement().fanLayers(), new Duty(percent));
                best = Math.max(
                        best, RadiatorAir.operatingPoint(radiator, bank, path).conductanceWPerK());
            }
        }
        return best;
    }
}
