package loopwright.tolerance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The probability that every clause of a group holds, deviations shared among them.
 *
 * <p>The deviations are turned into independent <b>columns</b>: each rectangular one is a column of its own, and the normal
 * ones are made orthogonal in the order of the margins (the Cholesky factor of their covariance). Column by column the values
 * that no clause forbids are found, given the columns before it; their share is multiplied up, and one value is drawn among
 * them ([Genz1992], here with alternatives and with rectangular columns). The mean of that product over evenly spread points is
 * the probability; several shifts of the points tell how sure it is.
 *
 * <p><b>Accuracy.</b> Points are doubled until the standard error is below 4e-4, or there are 65 536 of them.
 */
final class GroupIntegral {

    /** Where the doubling stops: below the 1e-3 that is promised, since few shifts tell the error only roughly. */
    private static final double ERROR_MAX = 4e-4;

    /** Points of each shift at first. */
    private static final int FIRST_POINTS = 32;

    /** What is left of a margin's variance after earlier columns is nothing below this share of it. */
    private static final double NOTHING_LEFT = 1e-12;

    private final List<Form> forms = new ArrayList<>();
    private final List<Column> columns = new ArrayList<>();
    private final double[][] rows;
    private final int[] last;
    private final int rules;

    /**
     * Sets up.
     *
     * @param clauses hardest to keep first
     */
    GroupIntegral(List<Clause> clauses) {
        this.rules = clauses.size();
        clauses.forEach(c -> forms.addAll(c.forms()));
        List<Integer> rectangular = rectangular();
        this.rows = new double[forms.size()][rectangular.size() + forms.size()];
        this.last = new int[forms.size()];
        for (int number : rectangular) {
            for (int f = 0; f < rows.length; f++) {
                rows[f][columns.size()] = scale(forms.get(f), number);
            }
            columns.add(new Column(true));
        }
        addNormalColumns();
        for (int f = 0; f < rows.length; f++) {
            int at = columns.size() - 1;
            while (at >= 0 && rows[f][at] == 0) {
                at--;
            }
            last[f] = at;
        }
        for (Clause clause : clauses) {
            Rule rule = rule(clause);
            columns.get(rule.column).rules().add(rule);
        }
        while (!columns.isEmpty() && columns.get(columns.size() - 1).rules().isEmpty()) {
            columns.remove(columns.size() - 1);
        }
    }

    /** A clause as numbers of its margins, and the column at which it is decided. */
    private static final class Rule {
        private final int[] forms;
        private final int column;

        private Rule(int[] forms, int column) {
            this.forms = forms;
            this.column = column;
        }
    }

    /** One independent deviation, and the clauses that are decided at it. */
    private record Column(boolean rectangular, List<Rule> rules) {
        Column(boolean rectangular) {
            this(rectangular, new ArrayList<>());
        }

        double below(double y) {
            return rectangular ? Math.min(1, Math.max(0, (y + 1) / 2)) : NormalCurve.below(y);
        }

        double at(double share) {
            return rectangular ? 2 * share - 1 : NormalCurve.at(Math.min(Math.max(share, TINY), 1 - TINY));
        }
    }

    /** Nearest to 0 and 1 that a share comes. */
    private static final double TINY = 1e-15;

    /** Rectangular deviations, those that matter most last: what is last is had without sampling. */
    private List<Integer> rectangular() {
        Map<Integer, Double> weights = new TreeMap<>();
        Map<Integer, String> names = new TreeMap<>();
        for (Form form : forms) {
            for (Form.Share share : form.shares()) {
                if (share.rectangular()) {
                    weights.merge(share.number(), Math.abs(share.scaleHmm()), Double::sum);
                    names.put(share.number(), share.name());
                }
            }
        }
        List<Integer> out = new ArrayList<>(weights.keySet());
        out.sort(Comparator.comparing((Integer n) -> weights.getOrDefault(n, 0.0))
                .thenComparing(n -> names.getOrDefault(n, "")));
        return out;
    }

    private static double scale(Form form, int number) {
        return form.shares().stream()
                .filter(s -> s.number() == number)
                .mapToDouble(Form.Share::scaleHmm)
                .sum();
    }

    /** The Cholesky factor of what the margins' normal deviations have in common, row by row. */
    private void addNormalColumns() {
        int first = columns.size();
        List<Integer> owners = new ArrayList<>();
        for (int f = 0; f < rows.length; f++) {
            double left = covariance(f, f);
            double whole = left;
            for (int k = 0; k < owners.size(); k++) {
                int owner = owners.get(k);
                double common = covariance(f, owner);
                for (int l = 0; l < k; l++) {
                    common -= rows[f][first + l] * rows[owner][first + l];
                }
                double share = common / rows[owner][first + k];
                boolean nothing = share * share <= NOTHING_LEFT * whole;
                rows[f][first + k] = nothing ? 0 : share;
                left -= share * share;
            }
            if (left > NOTHING_LEFT * whole) {
                rows[f][columns.size()] = Math.sqrt(left);
                owners.add(f);
                columns.add(new Column(false));
            }
        }
    }

    private double covariance(int f, int g) {
        double sum = 0;
        for (Form.Share share : forms.get(f).shares()) {
            if (!share.rectangular()) {
                sum += share.scaleHmm() * scale(forms.get(g), share.number());
            }
        }
        return sum;
    }

    private Rule rule(Clause clause) {
        int[] numbers = clause.forms().stream().mapToInt(forms::indexOf).toArray();
        return new Rule(numbers, Arrays.stream(numbers).map(f -> last[f]).max().orElseThrow());
    }

    /** The probability. */
    double value(SobolPoints points) {
        SobolPoints.Table table = points.table(Math.max(1, columns.size()));
        double[] sums = new double[SobolPoints.SHIFTS];
        Draw draw = new Draw(new double[columns.size()], new AllowedShares(rules));
        int done = 0;
        int until = FIRST_POINTS;
        while (true) {
            for (int s = 0; s < sums.length; s++) {
                for (int i = done; i < until; i++) {
                    sums[s] += weight(table, s, i, draw);
                }
            }
            done = until;
            if (done == SobolPoints.MOST || standardError(sums, done) < ERROR_MAX) {
                break;
            }
            until = 2 * done;
        }
        return Math.min(1, mean(sums) / done);
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    private static double standardError(double[] sums, int points) {
        double mean = mean(sums);
        double squares = 0;
        for (double sum : sums) {
            squares += (sum - mean) * (sum - mean);
        }
        int n = sums.length;
        return Math.sqrt(squares / n / (n - 1)) / points;
    }

    /** The values drawn so far, and what is allowed of the next. */
    private static final class Draw {
        private final double[] y;
        private final AllowedShares allowed;

        private Draw(double[] y, AllowedShares allowed) {
            this.y = y;
            this.allowed = allowed;
        }
    }

    /** The product over the columns of the share that no clause forbids. */
    private double weight(SobolPoints.Table table, int shift, int point, Draw draw) {
        double weight = 1;
        AllowedShares allowed = draw.allowed;
        for (int k = 0; k < columns.size(); k++) {
            Column column = columns.get(k);
            allowed.reset();
            for (Rule rule : column.rules()) {
                limit(draw, rule, k);
            }
            double share = allowed.total();
            weight *= share;
            if (weight == 0 || k == columns.size() - 1) {
                break;
            }
            draw.y[k] = column.at(allowed.at(share * table.at(shift, point, k)));
        }
        return weight;
    }

    /** Takes away what a clause forbids at its column, given the columns before. */
    private void limit(Draw draw, Rule rule, int k) {
        double above = Double.POSITIVE_INFINITY;
        double below = Double.NEGATIVE_INFINITY;
        for (int f : rule.forms) {
            double sum = forms.get(f).nominalHmm();
            for (int l = 0; l < Math.min(k, last[f] + 1); l++) {
                sum += rows[f][l] * draw.y[l];
            }
            if (last[f] < k) {
                if (sum >= 0) {
                    return;
                }
            } else if (rows[f][k] > 0) {
                above = Math.min(above, -sum / rows[f][k]);
            } else {
                below = Math.max(below, -sum / rows[f][k]);
            }
        }
        if (below < above) {
            Column column = columns.get(k);
            draw.allowed.forbid(
                    below == Double.NEGATIVE_INFINITY ? 0 : column.below(below),
                    above == Double.POSITIVE_INFINITY ? 1 : column.below(above));
        }
    }
}
