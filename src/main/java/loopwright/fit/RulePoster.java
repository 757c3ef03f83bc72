package loopwright.fit;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import loopwright.catalog.part.Part;
import loopwright.fit.rules.Chosen;
import loopwright.fit.rules.ModRule;
import loopwright.fit.rules.PartRule;
import loopwright.fit.rules.Role;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/** The one class that turns rules into posted constraints, by kind; each is named by its rule's id. */
final class RulePoster {

    private final Model model;

    RulePoster(Model model) {
        this.model = model;
    }

    /**
     * Posts a rule on parts.
     *
     * @param vars a variable a role: the index into {@code parts}; one past the end means nothing fills it
     */
    void post(PartRule rule, Map<Role, IntVar> vars, Map<Role, List<? extends Part>> parts) {
        if (rule instanceof PartRule.TupleRule tuple) {
            postTuple(tuple, vars, parts);
        } else if (rule instanceof PartRule.SumRule sum) {
            postSum(sum, vars, parts);
        }
    }

    private void postTuple(PartRule.TupleRule rule, Map<Role, IntVar> vars, Map<Role, List<? extends Part>> parts) {
        Role[] roles = rule.roles().toArray(Role[]::new);
        IntVar[] scope = Arrays.stream(roles).map(vars::get).toArray(IntVar[]::new);
        Tuples tuples = new Tuples(true);
        int[] at = new int[roles.length];
        addTuples(rule, roles, scope, parts, at, 0, tuples);
        if (tuples.nbTuples() == 0) {
            model.falseConstraint().post();
        } else if (scope.length == 1) {
            int[] values = new int[tuples.nbTuples()];
            for (int i = 0; i < values.length; i++) {
                values[i] = tuples.get(i)[0];
            }
            model.member(scope[0], values).post();
        } else {
            model.table(scope, tuples).post();
        }
    }

    private static void addTuples(
            PartRule.TupleRule rule,
            Role[] roles,
            IntVar[] scope,
            Map<Role, List<? extends Part>> parts,
            int[] at,
            int depth,
            Tuples tuples) {
        if (depth == roles.length) {
            Map<Role, Part> chosen = new EnumMap<>(Role.class);
            for (int i = 0; i < roles.length; i++) {
                List<? extends Part> all = parts.getOrDefault(roles[i], List.of());
                if (at[i] < all.size()) {
                    chosen.put(roles[i], all.get(at[i]));
                }
            }
            if (rule.allows(new Chosen(chosen))) {
                tuples.add(at.clone());
            }
            return;
        }
        for (int value = scope[depth].getLB(); value <= scope[depth].getUB(); value++) {
            at[depth] = value;
            addTuples(rule, roles, scope, parts, at, depth + 1, tuples);
        }
    }

    private void postSum(PartRule.SumRule rule, Map<Role, IntVar> vars, Map<Role, List<? extends Part>> parts) {
        IntVar[] terms = new IntVar[rule.roles().size()];
        for (int i = 0; i < terms.length; i++) {
            Role role = rule.roles().get(i);
            int[] table = parts.getOrDefault(role, List.of()).stream()
                    .mapToInt(p -> rule.contribution(role, p))
                    .toArray();
            int low = Arrays.stream(table).min().orElse(0);
            int high = Arrays.stream(table).max().orElse(0);
            terms[i] = model.intVar(rule.id() + "." + role, low, high);
            model.element(terms[i], table, vars.get(role)).post();
        }
        model.sum(terms, ">=", -rule.constant()).post();
    }

    /** Posts a rule on mods. */
    void post(ModRule rule, Map<String, BoolVar> mods, ModWeights weights) {
        if (rule instanceof ModRule.Requires r) {
            model.arithm(var(mods, r.mod()), "<=", var(mods, r.required())).post();
        } else if (rule instanceof ModRule.Excludes e) {
            model.arithm(var(mods, e.mod()), "+", var(mods, e.other()), "<=", 1).post();
        } else if (rule instanceof ModRule.Forbidden f) {
            model.arithm(var(mods, f.mod()), "=", 0).post();
        } else if (rule instanceof ModRule.Fixed f) {
            model.arithm(var(mods, f.mod()), "=", 1).post();
        } else if (rule instanceof ModRule.CutsAtMost c) {
            BoolVar[] all = mods.values().toArray(BoolVar[]::new);
            int[] cuts = mods.keySet().stream()
                    .mapToInt(id -> weights.cuts(id, c.visibleOnly()))
                    .toArray();
            model.scalar(all, cuts, "<=", c.cuts()).post();
        }
    }

    private static BoolVar var(Map<String, BoolVar> mods, String id) {
        return Objects.requireNonNull(mods.get(id), id);
    }

    /** How many cuts a mod makes. */
    interface ModWeights {
        /** Cuts of a mod: all of them, or only those that show. */
        int cuts(String mod, boolean visibleOnly);
    }
}
