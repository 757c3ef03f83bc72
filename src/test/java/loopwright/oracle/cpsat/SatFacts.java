package loopwright.oracle.cpsat;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import com.google.ortools.util.Domain;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A CP-SAT model with half-reified facts: a fact that is chosen forces its inequality. */
final class SatFacts {
    final CpModel model;
    private final Map<String, Literal> facts = new TreeMap<>();

    SatFacts() {
        Loader.loadNativeLibraries();
        model = new CpModel();
    }

    Literal yes() {
        return model.trueLiteral();
    }

    IntVar position(String name, List<List<Integer>> spans) {
        long[][] intervals =
                spans.stream().map(s -> new long[] {s.get(0), s.get(1)}).toArray(long[][]::new);
        return model.newIntVarFromDomain(Domain.fromIntervals(intervals), name);
    }

    /** A fact that forces {@code variable} into {@code [from, to]}. */
    Literal within(IntVar variable, long from, long to) {
        return facts.computeIfAbsent(variable.getName() + "@" + from + ":" + to, k -> {
            Literal out = model.newBoolVar(k);
            model.addLinearConstraint(variable, from, to).onlyEnforceIf(out);
            return out;
        });
    }

    /** A fact that forces {@code one - other >= gap}. */
    Literal ahead(IntVar one, IntVar other, long gap) {
        return facts.computeIfAbsent(one.getName() + "-" + other.getName() + ">" + gap, k -> {
            Literal out = model.newBoolVar(k);
            LinearExpr difference =
                    LinearExpr.newBuilder().add(one).addTerm(other, -1).build();
            model.addGreaterOrEqual(difference, gap).onlyEnforceIf(out);
            return out;
        });
    }

    /** If all of {@code when} hold, one of {@code then} must. */
    void rule(List<Literal> when, List<Literal> then) {
        List<Literal> clause = new ArrayList<>(then);
        when.forEach(w -> clause.add(w.not()));
        model.addBoolOr(clause);
    }

    /** A fact that forces all of these. */
    Literal all(List<Literal> these) {
        Literal out = model.newBoolVar("all");
        these.forEach(t -> model.addImplication(out, t));
        return out;
    }
}
