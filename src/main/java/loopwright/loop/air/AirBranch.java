package loopwright.loop.air;

import java.util.Optional;
import loopwright.loop.BracketedRoot;

/**
 * One mount with fans: what they push against, and the flow that comes of it at a pressure inside the case.
 *
 * <p>Fans' pressure and the help of the pressure inside equal path and core: one root, as the surplus falls with flow.
 *
 * <p><b>Units.</b> m³/s, Pa.
 *
 * <p><b>Valid for</b> flow the way the fans blow. Where the pressure inside is more than they hold against, they stall and
 * the flow is 0: what would be driven back through them is left out.
 */
public final class AirBranch implements BracketedRoot.Falling {

    /** What a flow finds in its way. */
    public record Way(AirResistance path, Optional<CoreFace> core) {}

    private final String name;
    private final AirDirection direction;
    private final FanBank fans;
    private final Way way;

    /** A branch. */
    public AirBranch(String name, AirDirection direction, FanBank fans, Way way) {
        this.name = name;
        this.direction = direction;
        this.fans = fans;
        this.way = way;
    }

    /** The mount. */
    public String name() {
        return name;
    }

    /** Which way it blows. */
    public AirDirection direction() {
        return direction;
    }

    /** Its fans. */
    public FanBank fans() {
        return fans;
    }

    /** What is in the way. */
    public Way way() {
        return way;
    }

    /** What the fans have over path and core, Pa, for air through the core. */
    @Override
    public double at(double coreFlowM3PerS) {
        if (way.core().isEmpty()) {
            return fans.pressurePa(coreFlowM3PerS) - way.path().lossPa(coreFlowM3PerS);
        }
        CoreFace core = way.core().get();
        double loss = core.lossPa(coreFlowM3PerS);
        double whole = core.wholeM3PerS(coreFlowM3PerS, loss);
        return fans.pressurePa(whole) - way.path().lossPa(whole) - loss;
    }

    @Override
    public double slopeAt(double coreFlowM3PerS) {
        if (way.core().isEmpty()) {
            return fans.slopePaSPerM3(coreFlowM3PerS) - way.path().slopePaSPerM3(coreFlowM3PerS);
        }
        CoreFace core = way.core().get();
        double loss = core.lossPa(coreFlowM3PerS);
        double slope = core.slopePaSPerM3(coreFlowM3PerS);
        double whole = core.wholeM3PerS(coreFlowM3PerS, loss);
        return (fans.slopePaSPerM3(whole) - way.path().slopePaSPerM3(whole)) * core.wholeSlope(loss, slope) - slope;
    }

    /** Air through the core, or through the bare fans, at a gauge pressure inside, m³/s. */
    public double coreFlowM3PerS(double insidePa, double guessM3PerS) {
        double help = direction.help() * insidePa;
        if (way.path().isClosed() || at(0) + help <= 0) {
            return 0;
        }
        return BracketedRoot.of(name + ": airflow", new Helped(this, help), 0, fans.reachM3PerS(help), guessM3PerS);
    }

    /** Air through the whole mount for air through its core, m³/s. */
    public double wholeM3PerS(double coreFlowM3PerS) {
        return way.core().isEmpty() ? coreFlowM3PerS : way.core().get().wholeM3PerS(coreFlowM3PerS);
    }

    /** How fast the whole mount's flow rises with pressure that helps, m³/(s·Pa). */
    double riseM3PerSPerPa(double coreFlowM3PerS) {
        if (coreFlowM3PerS == 0) { // exactly: the fans stall
            return 0;
        }
        double wholeSlope = way.core().isEmpty() ? 1 : way.core().get().wholeSlope(coreFlowM3PerS);
        return -wholeSlope / slopeAt(coreFlowM3PerS);
    }

    private record Helped(AirBranch branch, double helpPa) implements BracketedRoot.Falling {
        @Override
        public double at(double coreFlowM3PerS) {
            return branch.at(coreFlowM3PerS) + helpPa;
        }

        @Override
        public double slopeAt(double coreFlowM3PerS) {
            return branch.slopeAt(coreFlowM3PerS);
        }
    }
}
