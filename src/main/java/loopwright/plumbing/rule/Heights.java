package loopwright.plumbing.rule;

import java.util.Comparator;
import java.util.stream.Stream;
import loopwright.plumbing.LoopPart;
import loopwright.plumbing.LoopPlan;
import loopwright.plumbing.PlannedRun;
import loopwright.plumbing.Port;
import loopwright.plumbing.route.Where;
import loopwright.quantity.Hundredths;

/** Highest and lowest points of a loop, over the chassis's floor. */
final class Heights {

    private Heights() {}

    /** A height and what is there. */
    record Point(String what, int zHmm) {}

    /** The highest point: of a body, or of a tube's axis. */
    static Point highest(LoopPlan plan) {
        return Stream.concat(
                        plan.parts().stream()
                                .map(p -> new Point(p.name(), p.high().z())),
                        plan.runs().stream().map(r -> new Point("tube " + r.name(), top(r))))
                .max(Comparator.comparingInt(Point::zHmm).thenComparing(Point::what, Comparator.reverseOrder()))
                .orElseThrow();
    }

    /** The lowest point. */
    static Point lowest(LoopPlan plan) {
        return Stream.concat(
                        plan.parts().stream()
                                .map(p -> new Point(p.name(), p.low().z())),
                        plan.runs().stream().map(r -> new Point("tube " + r.name(), bottom(r))))
                .min(Comparator.comparingInt(Point::zHmm).thenComparing(Point::what))
                .orElseThrow();
    }

    private static int top(PlannedRun run) {
        return points(run).mapToInt(Where::z).max().orElseThrow();
    }

    private static int bottom(PlannedRun run) {
        return points(run).mapToInt(Where::z).min().orElseThrow();
    }

    private static Stream<Where> points(PlannedRun run) {
        return run.route()
                .map(r -> r.points().stream())
                .orElseGet(() -> Stream.of(run.from().at(), run.to().at()));
    }

    static int highestPort(LoopPart part) {
        return part.ports().stream().map(Port::at).mapToInt(Where::z).max().orElseThrow();
    }

    static int lowestPort(LoopPart part) {
        return part.ports().stream().map(Port::at).mapToInt(Where::z).min().orElseThrow();
    }

    static String mm(int hmm) {
        return Math.round(hmm / (double) Hundredths.PER_MM) + " mm";
    }
}
