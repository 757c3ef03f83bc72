package loopwright.oracle.cpsat;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Inside;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.Panel;
import loopwright.oracle.LayoutText;
import loopwright.oracle.OracleCase;
import loopwright.quantity.Dimension;

/**
 * Counts layouts that fit with OR-Tools CP-SAT: solves, writes down the layout, forbids it, and solves again.
 *
 * <p>Knows only what is known: a stack or part with an unknown dimension never fits here.
 */
public final class CpSatCount {
    private static final List<String> WALLS_LOW = List.of("LEFT", "FRONT", "FLOOR");
    private static final List<String> WALLS_HIGH = List.of("RIGHT", "REAR", "ROOF");

    private final OracleCase question;
    private final SatFacts facts = new SatFacts();
    private final List<SatMount> mounts = new ArrayList<>();
    private final List<Integer> insideHmm;
    private final List<IntVar> still;

    private CpSatCount(OracleCase question, Set<String> mods) {
        this.question = question;
        Chassis chassis = question.chassis();
        var interior = chassis.shell().interior();
        insideHmm = List.of(
                interior.widthMm().valueHmm(),
                interior.depthMm().valueHmm(),
                interior.heightMm().valueHmm());
        IntVar zero = facts.position("still", List.of(List.of(0, 0)));
        still = List.of(zero, zero, zero);
        SatParts parts = new SatParts(facts, question.catalog(), chassis, question.brief(), mods);
        parts.post();
        List<SatBody> standing = new ArrayList<>(parts.bodies);
        List<Mod> done =
                chassis.mods().stream().filter(m -> mods.contains(m.id())).toList();
        built(chassis, done).forEach(standing::add);
        for (int i = 0; i < standing.size(); i++) {
            SatBody one = standing.get(i);
            if (one.blind) {
                facts.rule(one.when, List.of());
            }
            walls(one, still);
            for (int j = 0; j < i; j++) {
                apart(one, still, standing.get(j), still);
            }
        }
        hang(chassis, done, standing);
    }

    /** Layouts that fit with one mod set, which must be valid, leaving out those of {@code but}. */
    public static SortedSet<String> layouts(OracleCase question, Set<String> mods, Set<String> but) {
        return new CpSatCount(question, mods).solved(but);
    }

    /** Layouts that fit with at least one of these valid mod sets. */
    public static SortedSet<String> layouts(OracleCase question, List<? extends Set<String>> validSets) {
        SortedSet<String> out = new TreeSet<>();
        validSets.forEach(mods -> out.addAll(layouts(question, mods, out)));
        return out;
    }

    private static List<SatBody> built(Chassis chassis, List<Mod> done) {
        List<SatBody> out = new ArrayList<>();
        for (Inside.Obstruction o : chassis.inside().obstructions()) {
            out.add(new SatBody(List.of(), "case:" + o.id(), List.of()));
            o.boxes().forEach(out.get(out.size() - 1)::fixed);
        }
        for (Inside.Removable r : chassis.inside().removables()) {
            if (done.stream().noneMatch(m -> m.effect().removes().contains(r.id()))) {
                out.add(new SatBody(List.of(), "case:" + r.id(), List.of()));
                r.boxes().forEach(out.get(out.size() - 1)::fixed);
            }
        }
        for (Mod mod : done) {
            for (Inside.Obstruction o : mod.effect().adds()) {
                out.add(new SatBody(List.of(), "case:" + o.id(), List.of()));
                o.boxes().forEach(out.get(out.size() - 1)::fixed);
            }
        }
        return out;
    }

    private void hang(Chassis chassis, List<Mod> done, List<SatBody> standing) {
        var byText = SatShape.byText(question.catalog(), question.brief().loop());
        List<Literal> any = new ArrayList<>();
        for (Mount mount : chassis.mounts()) {
            var face = chassis.shell().panels().stream()
                    .filter(p -> p.id().equals(mount.panel()))
                    .map(Panel::face)
                    .findFirst()
                    .orElseThrow();
            SatMount here = new SatMount(facts, question.catalog(), mount, face, done);
            int wall = insideHmm.get(SatShape.axis(face.normal()));
            double area = question.brief().limits().freeAreaMin();
            byText.forEach((text, same) -> here.offer(text, same, wall, area));
            facts.model.addAtMostOne(here.shapes.values());
            any.addAll(here.shapes.values());
            for (SatBody body : here.bodies) {
                walls(body, here.moves);
                standing.forEach(other -> apart(body, here.moves, other, still));
                for (SatMount before : mounts) {
                    before.bodies.forEach(other -> apart(body, here.moves, other, before.moves));
                }
            }
            mounts.add(here);
        }
        facts.model.addBoolOr(any);
    }

    private void walls(SatBody body, List<IntVar> moves) {
        if (body.group.startsWith("case:")) {
            return;
        }
        for (SatBody.SatBox box : body.boxes) {
            for (int axis = 0; axis < 3; axis++) {
                IntVar move = moves.get(axis);
                boolean freeLow = body.free.contains(WALLS_LOW.get(axis));
                boolean freeHigh = body.free.contains(WALLS_HIGH.get(axis));
                long low = freeLow
                        ? low(move)
                        : box.needHmm() + spare(box, axis, false) - box.low().get(axis);
                long high = freeHigh
                        ? high(move)
                        : insideHmm.get(axis)
                                - box.needHmm()
                                - spare(box, axis, true)
                                - box.high().get(axis);
                if (low > high || low > high(move) || high < low(move)) {
                    facts.rule(body.when, List.of());
                } else if (low > low(move) || high < high(move)) {
                    facts.rule(body.when, List.of(facts.within(move, low, high)));
                }
            }
        }
    }

    /** What a wall asks of a box beyond its need. */
    private int spare(SatBody.SatBox box, int axis, boolean highWall) {
        boolean sizeCounts = highWall != (box.doubt().hungAxis() == axis);
        return spare((highWall ? box.doubt().high() : box.doubt().low()).get(axis), sizeCounts, axis);
    }

    /** What is asked beyond the need where one box is past the other. */
    private int spare(SatBody.SatBox past, SatBody.SatBox before, int axis) {
        boolean sizeCounts = (past.doubt().hungAxis() == axis) ^ (before.doubt().hungAxis() == axis);
        return spare(past.doubt().low().get(axis) + before.doubt().high().get(axis), sizeCounts, axis);
    }

    private int spare(int halves, boolean sizeCounts, int axis) {
        if (!question.brief().limits().mods().noTightPlaces()) {
            return 0;
        }
        var interior = question.chassis().shell().interior();
        Dimension size = List.of(interior.widthMm(), interior.depthMm(), interior.heightMm())
                .get(axis);
        return Math.max(200, (halves + (sizeCounts ? 2 * size.plusMinusHmm() : 0) + 1) / 2);
    }

    private static long low(IntVar variable) {
        return variable.getDomain().min();
    }

    private static long high(IntVar variable) {
        return variable.getDomain().max();
    }

    private void apart(SatBody one, List<IntVar> movesOne, SatBody other, List<IntVar> movesOther) {
        if (one.exempt(other)) {
            return;
        }
        List<Literal> when = new ArrayList<>(one.when);
        when.addAll(other.when);
        for (SatBody.SatBox a : one.boxes) {
            for (SatBody.SatBox b : other.boxes) {
                if (a.room() && b.room()) {
                    continue;
                }
                List<Literal> ways = new ArrayList<>();
                int need = Math.max(a.needHmm(), b.needHmm());
                boolean always = false;
                for (int axis = 0; axis < 3; axis++) {
                    int pastB = b.high().get(axis)
                            + need
                            + spare(a, b, axis)
                            - a.low().get(axis);
                    int pastA = a.high().get(axis)
                            + need
                            + spare(b, a, axis)
                            - b.low().get(axis);
                    IntVar mine = movesOne.get(axis);
                    IntVar theirs = movesOther.get(axis);
                    always |= way(mine, theirs, pastB, ways) || way(theirs, mine, pastA, ways);
                }
                if (!always) {
                    facts.rule(when, ways);
                }
            }
        }
    }

    /** Adds the fact {@code one - other >= gap}; true if it always holds. */
    private boolean way(IntVar one, IntVar other, int gap, List<Literal> ways) {
        if (low(one) - high(other) >= gap) {
            return true;
        }
        if (high(one) - low(other) >= gap) {
            ways.add(facts.ahead(one, other, gap));
        }
        return false;
    }

    private SortedSet<String> solved(Set<String> but) {
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setRandomSeed(1).setCpModelPresolve(false);
        SortedSet<String> out = new TreeSet<>();
        but.forEach(this::block);
        while (true) {
            CpSolverStatus status = solver.solve(facts.model);
            if (status == CpSolverStatus.INFEASIBLE) {
                return out;
            }
            if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
                throw new IllegalStateException("seed " + question.seed() + ": CP-SAT says " + status);
            }
            String text = "";
            for (SatMount m : mounts) {
                for (var shape : m.shapes.entrySet()) {
                    if (solver.booleanValue(shape.getValue())) {
                        text = LayoutText.with(text, m.mount.id(), shape.getKey());
                    }
                }
            }
            out.add(text);
            block(text);
        }
    }

    /** Forbids one layout. */
    private void block(String layout) {
        List<Literal> other = new ArrayList<>();
        int matched = 0;
        List<String> stacks = List.of(layout.split(" \\| "));
        for (SatMount m : mounts) {
            String here = stacks.stream()
                    .filter(s -> s.startsWith(m.mount.id() + ":"))
                    .findFirst()
                    .map(s -> s.substring(m.mount.id().length() + 1))
                    .orElse("");
            for (var shape : m.shapes.entrySet()) {
                boolean chosen = shape.getKey().equals(here);
                matched += chosen ? 1 : 0;
                other.add(chosen ? shape.getValue().not() : shape.getValue());
            }
        }
        if (matched == stacks.size()) {
            facts.model.addBoolOr(other);
        }
    }
}
