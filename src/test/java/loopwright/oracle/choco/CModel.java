package loopwright.oracle.choco;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Inside;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.oracle.LayoutText;
import loopwright.oracle.ModSetOrder;
import loopwright.oracle.OracleCase;
import loopwright.quantity.Dimension;
import org.chocosolver.solver.constraints.Constraint;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.search.strategy.assignments.DecisionOperatorFactory;
import org.chocosolver.solver.search.strategy.selectors.values.IntDomainMiddle;
import org.chocosolver.solver.search.strategy.selectors.variables.InputOrder;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/** The model of one case, with unknown bodies forbidden or allowed. */
final class CModel {
    private final CLogic logic = new CLogic();
    private final OracleCase question;
    private final Chassis chassis;
    private final boolean allowUnknown;
    private final List<BoolVar> done = new ArrayList<>();
    private final List<CShape> shapes;
    private final List<CMount> mounts = new ArrayList<>();
    private final List<CBody> standing = new ArrayList<>();
    private final List<IntVar> choices;
    private boolean leftOut;

    CModel(OracleCase question, boolean allowUnknown) {
        this.question = question;
        this.chassis = question.chassis();
        this.allowUnknown = allowUnknown;
        this.shapes = CShape.of(question);
        modSets();
        CChoice choice = new CChoice(logic, question, done);
        choice.post();
        choices = choice.decisions;
        standing.addAll(choice.bodies);
        chassisBodies();
        Map<Axis, Dimension> inside = new EnumMap<>(Axis.class);
        inside.put(Axis.X, chassis.shell().interior().widthMm());
        inside.put(Axis.Y, chassis.shell().interior().depthMm());
        inside.put(Axis.Z, chassis.shell().interior().heightMm());
        CBeyond beyond = new CBeyond(question.brief().limits().mods().noTightPlaces(), inside);
        standing(beyond);
        hanging(beyond);
    }

    private void modSets() {
        var limits = question.brief().limits().mods();
        List<Mod> mods = chassis.mods();
        mods.forEach(m -> done.add(logic.model.boolVar("mod-" + m.id())));
        int[] visible = new int[mods.size()];
        int[] cuts = new int[mods.size()];
        for (int i = 0; i < mods.size(); i++) {
            Mod mod = mods.get(i);
            visible[i] = mod.look().visibleCuts();
            cuts[i] = visible[i] + mod.look().hiddenCuts();
            if (limits.forbid().contains(mod.id())) {
                logic.rule(List.of(done.get(i)), List.of());
            }
            for (String other : mod.rules().requires()) {
                logic.rule(List.of(done.get(i)), List.of(modVar(other)));
            }
            for (String other : mod.rules().excludes()) {
                logic.rule(List.of(done.get(i), modVar(other)), List.of());
            }
        }
        if (!mods.isEmpty()) {
            BoolVar[] all = done.toArray(BoolVar[]::new);
            limits.visibleCutsMax()
                    .ifPresent(
                            most -> logic.model.scalar(all, visible, "<=", most).post());
            limits.cutsMax()
                    .ifPresent(most -> logic.model.scalar(all, cuts, "<=", most).post());
        }
    }

    private BoolVar modVar(String id) {
        for (int i = 0; i < done.size(); i++) {
            if (chassis.mods().get(i).id().equals(id)) {
                return done.get(i);
            }
        }
        return logic.constant(false);
    }

    private void chassisBodies() {
        for (Inside.Obstruction o : chassis.inside().obstructions()) {
            standing.add(new CBody(List.of(), o.id(), false).chassisBoxes(o));
        }
        for (Inside.Removable r : chassis.inside().removables()) {
            List<BoolVar> still = new ArrayList<>();
            for (int m = 0; m < done.size(); m++) {
                if (chassis.mods().get(m).effect().removes().contains(r.id())) {
                    still.add(done.get(m).not());
                }
            }
            CBody body = new CBody(still, r.id(), false);
            r.boxes().forEach(body::chassisBox);
            standing.add(body);
        }
        for (int m = 0; m < done.size(); m++) {
            for (Inside.Obstruction o : chassis.mods().get(m).effect().adds()) {
                standing.add(new CBody(List.of(done.get(m)), o.id(), false).chassisBoxes(o));
            }
        }
    }

    private void standing(CBeyond beyond) {
        for (int i = 0; i < standing.size(); i++) {
            CBody a = standing.get(i);
            boolean unknown = a.unknown && !allowUnknown;
            leftOut |= unknown;
            if (unknown || a.pokesOut(beyond)) {
                logic.rule(a.when, List.of());
            }
            for (int j = 0; j < i; j++) {
                if (a.clash(standing.get(j), beyond)) {
                    logic.rule(both(a, standing.get(j)), List.of());
                }
            }
        }
    }

    private static List<BoolVar> both(CBody a, CBody b) {
        List<BoolVar> out = new ArrayList<>(a.when);
        out.addAll(b.when);
        return out;
    }

    private void hanging(CBeyond beyond) {
        CApart apart = new CApart(logic, beyond);
        List<List<CBody>> stacks = new ArrayList<>();
        List<BoolVar> any = new ArrayList<>();
        for (Mount mount : chassis.mounts()) {
            Face face = chassis.shell().panels().stream()
                    .filter(p -> p.id().equals(mount.panel()))
                    .findAny()
                    .orElseThrow()
                    .face();
            CMount hung = new CMount(logic, question.catalog(), mount, face, chassis.mods(), done, allowUnknown);
            hung.freeAreaMin = question.brief().limits().freeAreaMin();
            logic.model.arithm(hung.shape, "<=", shapes.size()).post();
            any.add(logic.is(hung.shape, 0).not());
            List<CBody> here = new ArrayList<>();
            for (int k = 0; k < shapes.size(); k++) {
                List<BoolVar> when = List.of(logic.is(hung.shape, k + 1));
                CBody body = shapes.get(k)
                        .body(
                                when,
                                mount,
                                face,
                                beyond.inside().get(face.normal()).valueHmm(),
                                question.catalog().practice().room());
                here.add(body);
                if (body.unknown && !allowUnknown) {
                    leftOut = true;
                    logic.rule(when, List.of());
                    continue;
                }
                hung.post(k + 1, shapes.get(k));
                apart.fromWalls(hung, body);
                standing.forEach(other -> apart.fromBody(hung, body, other));
            }
            leftOut |= hung.leftOut();
            // a position of a mount without a stack means nothing: pin it
            logic.rule(List.of(logic.is(hung.shape, 0)), List.of(logic.atMost(hung.u, hung.u.getLB())));
            logic.rule(List.of(logic.is(hung.shape, 0)), List.of(logic.atMost(hung.v, hung.v.getLB())));
            for (int m = 0; m < mounts.size(); m++) {
                for (CBody one : stacks.get(m)) {
                    for (CBody other : here) {
                        apart.fromStack(mounts.get(m), one, hung, other);
                    }
                }
            }
            mounts.add(hung);
            stacks.add(here);
        }
        logic.rule(List.of(), any);
    }

    boolean leftOut() {
        return leftOut;
    }

    /** Every mod set with which each layout fits. */
    SortedMap<String, SortedSet<SortedSet<String>>> fits() {
        List<IntVar> all = new ArrayList<>(done);
        mounts.forEach(m -> all.add(m.shape));
        int heads = all.size();
        all.addAll(choices);
        List<IntVar> positions = new ArrayList<>();
        mounts.forEach(m -> positions.addAll(List.of(m.u, m.v)));
        IntVar[] first = all.toArray(IntVar[]::new);
        all.addAll(positions);
        IntVar[] vars = all.toArray(IntVar[]::new);
        Set<String> seen = new TreeSet<>();
        new Constraint("one solution each", new Seen(vars, heads, seen)).post();
        var solver = logic.model.getSolver();
        solver.setSearch(
                Search.inputOrderLBSearch(first),
                Search.intVarSearch(
                        new InputOrder<>(logic.model),
                        new IntDomainMiddle(true),
                        DecisionOperatorFactory.makeIntSplit(),
                        positions.toArray(IntVar[]::new)));
        SortedMap<String, SortedSet<SortedSet<String>>> out = new TreeMap<>();
        while (solver.solve()) {
            seen.add(Seen.key(vars, heads));
            List<String> mods = new ArrayList<>();
            for (int m = 0; m < done.size(); m++) {
                if (done.get(m).getValue() == 1) {
                    mods.add(chassis.mods().get(m).id());
                }
            }
            String text = "";
            for (CMount m : mounts) {
                if (m.shape.getValue() > 0) {
                    text = LayoutText.with(
                            text,
                            m.mount.id(),
                            shapes.get(m.shape.getValue() - 1).text());
                }
            }
            out.computeIfAbsent(text, t -> ModSetOrder.sets()).add(ModSetOrder.of(mods));
        }
        return out;
    }
}
