package loopwright.tolerance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Margins of which one is enough.
 *
 * @param forms likeliest first
 */
record Clause(List<Form> forms) {

    /** Hardest to keep first; the same order whatever was met before. */
    static final Comparator<Clause> HARDEST_FIRST = Comparator.comparingDouble(
                    (Clause c) -> c.forms().get(0).probability())
            .thenComparing(Clause::text);

    Clause {
        List<Form> sorted = new ArrayList<>(forms);
        sorted.sort(Comparator.comparingDouble((Form f) -> -f.probability()).thenComparing(Form::text));
        forms = List.copyOf(sorted);
    }

    int[] numbers() {
        return forms.stream()
                .flatMap(f -> f.shares().stream())
                .mapToInt(Form.Share::number)
                .distinct()
                .toArray();
    }

    /** Whether no two of its margins have a deviation in common. */
    boolean isOfIndependentForms() {
        for (int i = 0; i < forms.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (!FitProbability.areApart(
                        forms.get(i).numbers(), forms.get(j).numbers())) {
                    return false;
                }
            }
        }
        return true;
    }

    String key() {
        return forms.stream().map(f -> f.nominalHmm() + "@" + f.direction()).collect(Collectors.joining("|"));
    }

    private String text() {
        return forms.stream().map(Form::text).collect(Collectors.joining("|"));
    }

    /** The clauses without those that others imply. */
    static List<Clause> needed(List<Clause> clauses) {
        Map<String, Clause> hardest = new LinkedHashMap<>();
        for (Clause clause : clauses) {
            if (clause.forms().size() == 1) {
                hardest.merge(
                        clause.forms().get(0).direction(),
                        clause,
                        (a, b) ->
                                b.forms().get(0).nominalHmm() < a.forms().get(0).nominalHmm() ? b : a);
            }
        }
        Map<String, Integer> least = new HashMap<>();
        hardest.forEach((direction, clause) ->
                least.put(direction, clause.forms().get(0).nominalHmm()));
        List<Clause> out = new ArrayList<>(hardest.values());
        Set<String> seen = new HashSet<>();
        for (Clause clause : clauses) {
            boolean implied = clause.forms().size() == 1
                    || clause.forms().stream()
                            .anyMatch(f -> f.nominalHmm() >= least.getOrDefault(f.direction(), Integer.MAX_VALUE));
            if (!implied && seen.add(clause.key())) {
                out.add(clause);
            }
        }
        return out;
    }
}
