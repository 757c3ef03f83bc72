package loopwright.plumbing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.part.TubeFitting;

/**
 * The fittings of a loop and what they cost.
 *
 * @param missing what the catalogue or the brief has no fitting for
 */
public record FittingBill(List<Line> lines, List<String> missing) {

    /** Copies. */
    public FittingBill {
        lines = List.copyOf(lines);
        missing = List.copyOf(missing);
    }

    /** So many of one fitting. */
    public record Line(TubeFitting fitting, int count) {

        /** What they cost together. */
        public long cents() {
            return count * fitting.buy().priceCents();
        }
    }

    /** What all cost together, cents. */
    public long cents() {
        return lines.stream().mapToLong(Line::cents).sum();
    }

    /** Two straight fittings a run, its elbows, a drain if a port is left for it, plugs in the other free ports. */
    static FittingBill of(FittingChoice choice, List<PlannedRun> runs, int freePorts) {
        int elbows = runs.stream().mapToInt(PlannedRun::elbows).sum();
        int drains = Math.min(1, freePorts);
        List<Line> lines = new ArrayList<>();
        List<String> missing = new ArrayList<>();
        add(lines, missing, choice.straight(), 2 * runs.size(), "straight fittings for this tube");
        add(lines, missing, choice.elbow(), elbows, "right-angle elbows");
        add(lines, missing, choice.drain(), drains, "a drain");
        add(lines, missing, choice.plug(), freePorts - drains, "plugs");
        return new FittingBill(lines, missing);
    }

    private static void add(
            List<Line> lines, List<String> missing, Optional<TubeFitting> fitting, int count, String what) {
        if (count > 0) {
            fitting.ifPresentOrElse(f -> lines.add(new Line(f, count)), () -> missing.add(what));
        }
    }
}
