package loopwright.oracle.choco;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/** Keeps stacks apart from walls, from what stands, and from each other: one disjunction for each pair of boxes. */
final class CApart {
    private final CLogic logic;
    private final CBeyond beyond;
    private final Set<List<Object>> posted = new HashSet<>();

    CApart(CLogic logic, CBeyond beyond) {
        this.logic = logic;
        this.beyond = beyond;
    }

    void fromWalls(CMount at, CBody stack) {
        for (Face wall : Face.values()) {
            for (CBox box : stack.boxes) {
                if (stack.against.contains(wall)) {
                    continue;
                }
                Axis axis = wall.normal();
                BoolVar clear = wall.isHigh()
                        ? before(
                                at,
                                axis,
                                box.to(axis)
                                        + box.needHmm()
                                        + beyond.toHighWall(
                                                axis, box.along(axis).to()),
                                beyond.inside().get(axis).valueHmm())
                        : after(
                                at,
                                axis,
                                box.from(axis)
                                        - box.needHmm()
                                        - beyond.toLowWall(axis, box.along(axis).from()),
                                0);
                logic.rule(stack.when, List.of(clear));
            }
        }
    }

    /** {@code edge} of a stack's box at or after a coordinate. */
    private BoolVar after(CMount at, Axis axis, int edge, int coordinate) {
        if (axis == at.mount.lengthwise()) {
            return logic.atLeast(at.u, coordinate - edge);
        }
        return axis == at.across ? logic.atLeast(at.v, coordinate - edge) : logic.constant(edge >= coordinate);
    }

    private BoolVar before(CMount at, Axis axis, int edge, int coordinate) {
        if (axis == at.mount.lengthwise()) {
            return logic.atMost(at.u, coordinate - edge);
        }
        return axis == at.across ? logic.atMost(at.v, coordinate - edge) : logic.constant(edge <= coordinate);
    }

    void fromBody(CMount at, CBody stack, CBody other) {
        if (stack.ignores(other)) {
            return;
        }
        List<BoolVar> when = new ArrayList<>(stack.when);
        when.addAll(other.when);
        for (CBox a : stack.boxes) {
            for (CBox b : other.boxes) {
                if (a.room() && b.room()) {
                    continue;
                }
                int need = Math.max(a.needHmm(), b.needHmm());
                List<BoolVar> ways = new ArrayList<>();
                for (Axis axis : Axis.values()) {
                    CBox.Ends ea = a.along(axis);
                    CBox.Ends eb = b.along(axis);
                    int past = need + beyond.between(axis, ea.from(), eb.to());
                    int ahead = need + beyond.between(axis, eb.from(), ea.to());
                    ways.add(after(at, axis, a.from(axis) - past, b.to(axis)));
                    ways.add(before(at, axis, a.to(axis) + ahead, b.from(axis)));
                }
                logic.rule(when, ways);
            }
        }
    }

    void fromStack(CMount atA, CBody stackA, CMount atB, CBody stackB) {
        List<BoolVar> when = new ArrayList<>(stackA.when);
        when.addAll(stackB.when);
        for (CBox a : stackA.boxes) {
            for (CBox b : stackB.boxes) {
                if (a.room() && b.room()) {
                    continue;
                }
                int need = Math.max(a.needHmm(), b.needHmm());
                List<BoolVar> ways = new ArrayList<>();
                for (Axis axis : Axis.values()) {
                    CBox.Ends ea = a.along(axis);
                    CBox.Ends eb = b.along(axis);
                    ways.add(beyond(atA, ea.from(), atB, eb.to(), axis, need));
                    ways.add(beyond(atB, eb.from(), atA, ea.to(), axis, need));
                }
                if (posted.add(List.of(when, ways))) {
                    logic.rule(when, ways);
                }
            }
        }
    }

    /** Whether the low edge of one stack's box is past the high edge of the other's by the need. */
    private BoolVar beyond(CMount one, CEdge low, CMount other, CEdge high, Axis axis, int need) {
        IntVar mine = moves(one, axis);
        IntVar theirs = moves(other, axis);
        int gap = high.at() + need + beyond.between(axis, low, high) - low.at();
        if (mine.isAConstant() && theirs.isAConstant()) {
            return logic.constant(mine.getValue() - theirs.getValue() >= gap);
        }
        if (theirs.isAConstant()) {
            return logic.atLeast(mine, gap + theirs.getValue());
        }
        return mine.isAConstant() ? logic.atMost(theirs, mine.getValue() - gap) : logic.ahead(mine, theirs, gap);
    }

    private IntVar moves(CMount at, Axis axis) {
        if (axis == at.mount.lengthwise()) {
            return at.u;
        }
        return axis == at.across ? at.v : logic.model.intVar(0);
    }
}
