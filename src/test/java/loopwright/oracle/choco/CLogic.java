package loopwright.oracle.choco;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/** Reified facts about variables, made once each, and clauses over them. */
final class CLogic {
    final Model model = new Model("what fits");
    private final Map<String, BoolVar> facts = new TreeMap<>();
    private final BoolVar yes = model.boolVar(true);
    private final BoolVar no = model.boolVar(false);

    BoolVar is(IntVar variable, int value) {
        if (!variable.contains(value)) {
            return no;
        }
        return facts.computeIfAbsent(
                variable.getName() + "=" + value,
                k -> model.arithm(variable, "=", value).reify());
    }

    BoolVar atLeast(IntVar variable, int value) {
        if (variable.getLB() >= value) {
            return yes;
        }
        if (variable.getUB() < value) {
            return no;
        }
        return facts.computeIfAbsent(
                variable.getName() + ">" + value,
                k -> model.arithm(variable, ">=", value).reify());
    }

    BoolVar atMost(IntVar variable, int value) {
        return atLeast(variable, value + 1).not();
    }

    /** Whether {@code one - other >= value}. */
    BoolVar ahead(IntVar one, IntVar other, int value) {
        if (one.getLB() - other.getUB() >= value) {
            return yes;
        }
        if (one.getUB() - other.getLB() < value) {
            return no;
        }
        return facts.computeIfAbsent(
                one.getName() + "-" + other.getName() + ">" + value,
                k -> model.arithm(one, "-", other, ">=", value).reify());
    }

    BoolVar constant(boolean value) {
        return value ? yes : no;
    }

    /** All of {@code when} imply at least one of {@code then}. */
    void rule(List<BoolVar> when, List<BoolVar> then) {
        List<BoolVar> literals = new ArrayList<>();
        for (BoolVar w : when) {
            literals.add(w.not());
        }
        literals.addAll(then);
        if (literals.stream().anyMatch(l -> l.isInstantiatedTo(1))) {
            return;
        }
        literals.removeIf(l -> l.isInstantiatedTo(0));
        if (literals.isEmpty()) {
            model.falseConstraint().post();
        } else {
            model.addClauses(literals.toArray(BoolVar[]::new), new BoolVar[0]);
        }
    }

    /** A fact that is true exactly when all of these are. */
    BoolVar all(List<BoolVar> these) {
        if (these.stream().anyMatch(t -> t.isInstantiatedTo(0))) {
            return no;
        }
        BoolVar out = model.boolVar();
        these.forEach(t -> rule(List.of(out), List.of(t)));
        rule(these, List.of(out));
        return out;
    }
}
