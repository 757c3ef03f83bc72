package loopwright.rank;

import java.util.ArrayList;
import java.util.List;
import loopwright.fit.FitQuery;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.fit.MountFrame;
import loopwright.loop.air.AirDirection;

/**
 * Every way the air of a layout may go: each mount in or out, with or without one bare row of fans on an empty mount.
 */
final class AirPlans {

    private final FitQuery query;

    AirPlans(FitQuery query) {
        this.query = query;
    }

    /**
     * Stacks that carry fans, and which way each blows.
     *
     * @param stacks those of the layout, then the bare row, where there is one
     * @param directions one a stack
     */
    record AirPlan(List<Stack> stacks, List<AirDirection> directions) {}

    /** The plans for some stacks with a mod set; those without a bare row first. */
    List<AirPlan> of(List<Stack> stacks, ModSet mods) {
        List<AirPlan> out = new ArrayList<>();
        directions(stacks, out);
        for (MountFrame frame : query.fitCase().frames()) {
            if (stacks.stream().noneMatch(s -> s.frame().index() == frame.index())) {
                for (Stack row : query.fanRows(frame, mods)) {
                    List<Stack> rowLast = new ArrayList<>(stacks);
                    rowLast.add(row);
                    directions(List.copyOf(rowLast), out);
                }
            }
        }
        return out;
    }

    private static void directions(List<Stack> stacks, List<AirPlan> out) {
        for (int bits = 0; bits < 1 << stacks.size(); bits++) {
            List<AirDirection> directions = new ArrayList<>(stacks.size());
            for (int i = 0; i < stacks.size(); i++) {
                directions.add((bits >> i & 1) == 0 ? AirDirection.IN : AirDirection.OUT);
            }
            out.add(new AirPlan(stacks, List.copyOf(directions)));
        }
    }

    /** Stacks in the order of their mounts. */
    static List<Stack> inOrder(List<Stack> stacks) {
        List<Stack> out = new ArrayList<>(stacks);
        out.sort((a, b) -> Integer.compare(a.frame().index(), b.frame().index()));
        return out;
    }
}
