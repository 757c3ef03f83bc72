package loopwright.tolerance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * The probability that every box keeps its margin to every other, with each dimension off by what is said of it: normal, ± two
 * standard deviations, or evenly spread. A dimension that stands in several margins is off in all of them alike.
 *
 * <p>Margins that no dimension links are independent: their probabilities multiply. A single margin is had in closed form, and
 * so are several ways to be apart that share no dimension; what is left goes to {@link GroupIntegral}. Margins that are sure
 * by six standard deviations are left out, and so are those that another in the list implies.
 *
 * <p><b>Accuracy.</b> Standard error 1e-3 or better, usually 1e-4; checked against plain sampling and closed forms in
 * FitProbabilityTest.
 *
 * <p>Groups once worked out are kept: layouts have many in common. Not for several threads at once.
 */
public final class FitProbability {

    /** Beyond so many standard deviations a margin is sure: one time in a thousand million. */
    private static final double SURE_SIGMAS = 6;

    private final SobolPoints points = new SobolPoints();
    private final Map<String, Double> known = new HashMap<>();
    private final Map<Deviation, Integer> numbers = new HashMap<>();

    /** What there is to know about one deviation: two of one name but other size are two. */
    private record Deviation(String name, int valueHmm, int plusMinusHmm, boolean rectangular) {}

    /** The chance that all hold; absent where a dimension is not known. */
    public OptionalDouble ofAll(Collection<BoxMargin> boxes) {
        List<Clause> clauses = new ArrayList<>();
        for (BoxMargin box : boxes) {
            if (!box.isKnown()) {
                return OptionalDouble.empty();
            }
            List<Form> forms = new ArrayList<>();
            boolean sure = false;
            for (AxisMargin axis : box.axes()) {
                double reach = SURE_SIGMAS * axis.sigmaHmm()
                        + axis.halfWidthsHmm().stream().mapToDouble(a -> a).sum();
                sure |= axis.nominalHmm() >= reach;
                if (axis.nominalHmm() > -reach) {
                    forms.add(form(axis));
                }
            }
            if (!sure && forms.isEmpty()) {
                return OptionalDouble.of(0);
            }
            if (!sure) {
                clauses.add(new Clause(forms));
            }
        }
        return OptionalDouble.of(product(Clause.needed(clauses)));
    }

    private Form form(AxisMargin axis) {
        Map<Integer, Form.Share> shares = new TreeMap<>();
        axis.terms().forEach(t -> {
            boolean rectangular = AxisMargin.isRectangular(t.dimension());
            int number = number(new Deviation(
                    t.name(), t.dimension().valueHmm(), t.dimension().plusMinusHmm(), rectangular));
            shares.put(number, new Form.Share(number, t.name(), AxisMargin.scale(t), rectangular));
        });
        double floor = axis.floorSigmaHmm();
        if (floor > 0) {
            int number = number(new Deviation(axis.floorName(), 0, AxisMargin.FLOOR_HMM, false));
            shares.put(number, new Form.Share(number, axis.floorName(), floor, false));
        }
        List<Form.Share> sorted = new ArrayList<>(shares.values());
        sorted.sort(Comparator.comparing(Form.Share::name).thenComparing(Form.Share::scaleHmm));
        return new Form(axis.nominalHmm(), axis.probability(), sorted);
    }

    private int number(Deviation deviation) {
        return numbers.computeIfAbsent(deviation, d -> numbers.size());
    }

    /** The product over groups that no deviation links, smallest first, so that the order in which they come is not felt. */
    private double product(List<Clause> clauses) {
        double[] all =
                groups(clauses).stream().mapToDouble(this::ofGroup).sorted().toArray();
        double product = 1;
        for (double one : all) {
            product *= one;
        }
        return product;
    }

    private static Collection<List<Clause>> groups(List<Clause> clauses) {
        int[] group = new int[clauses.size()];
        Map<Integer, Integer> first = new HashMap<>();
        for (int i = 0; i < group.length; i++) {
            group[i] = i;
            for (int number : clauses.get(i).numbers()) {
                Integer other = first.putIfAbsent(number, i);
                if (other != null) {
                    int from = group[other];
                    int to = group[i];
                    for (int j = 0; j <= i; j++) {
                        group[j] = group[j] == to ? from : group[j];
                    }
                }
            }
        }
        Map<Integer, List<Clause>> out = new LinkedHashMap<>();
        for (int i = 0; i < group.length; i++) {
            out.computeIfAbsent(group[i], g -> new ArrayList<>()).add(clauses.get(i));
        }
        return out.values();
    }

    private double ofGroup(List<Clause> group) {
        if (group.size() == 1 && group.get(0).isOfIndependentForms()) {
            double none = 1;
            for (Form form : group.get(0).forms()) {
                none *= 1 - form.probability();
            }
            return 1 - none;
        }
        List<Clause> sorted = new ArrayList<>(group);
        sorted.sort(Clause.HARDEST_FIRST);
        StringBuilder key = new StringBuilder();
        sorted.forEach(c -> key.append(c.key()).append('&'));
        return known.computeIfAbsent(key.toString(), k -> new GroupIntegral(sorted).value(points));
    }

    /** Whether two lists of numbers have none in common; for short lists. */
    static boolean areApart(int[] a, int[] b) {
        return Arrays.stream(a).noneMatch(x -> Arrays.stream(b).anyMatch(y -> x == y));
    }
}
