package loopwright.plumbing.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import loopwright.plumbing.order.OrderQuestion.Pair;
import loopwright.plumbing.order.OrderQuestion.Round;
import loopwright.plumbing.order.OrderQuestion.Stop;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.IntVar;

/**
 * The cheapest way round a loop, proven: a circuit of the parts, and for each a port in and a port out.
 *
 * <p>Of several as cheap, the one whose successors, then ports, have the smallest numbers in the parts' order.
 */
public final class OrderSearch {

    private final OrderQuestion question;

    /** A search. */
    public OrderSearch(OrderQuestion question) {
        this.question = question;
    }

    /**
     * The cheapest way round, from the first part on.
     *
     * @throws IllegalStateException if there is none: with at least two parts there always is
     */
    public Round best() {
        Posted first = new Posted(question, OptionalInt.empty());
        Solver solver = first.model.getSolver();
        solver.setSearch(Search.inputOrderLBSearch(first.decisions()));
        Solution best = solver.findOptimalSolution(first.total, false);
        if (best == null) {
            throw new IllegalStateException("no way round the loop");
        }
        int least = best.getIntVal(first.total);
        Posted again = new Posted(question, OptionalInt.of(least));
        again.model.getSolver().setSearch(Search.inputOrderLBSearch(again.decisions()));
        if (!again.model.getSolver().solve()) {
            throw new IllegalStateException("the cheapest way round is not there a second time");
        }
        return again.round(least);
    }

    /** The model: {@code circuit}, and costs through {@code element}. */
    private static final class Posted {
        private final Model model = new Model("loop order");
        private final IntVar[] next;
        private final IntVar[] in;
        private final IntVar[] out;
        private final IntVar total;

        Posted(OrderQuestion question, OptionalInt exactly) {
            int parts = question.parts().size();
            int ports = question.portCount();
            int[] flat = question.costs().stream()
                    .flatMap(List::stream)
                    .mapToInt(Integer::intValue)
                    .toArray();
            int dearest = Arrays.stream(flat).max().orElse(0);
            next = model.intVarArray("next", parts, 0, parts - 1);
            in = new IntVar[parts];
            out = new IntVar[parts];
            IntVar[] costs = new IntVar[parts];
            for (int i = 0; i < parts; i++) {
                Stop stop = question.parts().get(i);
                in[i] = model.intVar("in" + i, numbers(stop.in()));
                out[i] = model.intVar("out" + i, numbers(stop.out()));
                model.arithm(in[i], "!=", out[i]).post();
            }
            model.circuit(next).post();
            for (int i = 0; i < parts; i++) {
                IntVar into = model.intVar("into" + i, 0, ports - 1);
                model.element(into, in, next[i], 0).post();
                IntVar cell = model.intVar("cell" + i, 0, ports * ports - 1);
                model.scalar(new IntVar[] {out[i], into}, new int[] {ports, 1}, "=", cell)
                        .post();
                costs[i] = model.intVar("cost" + i, 0, dearest);
                model.element(costs[i], flat, cell).post();
            }
            if (question.feeder() >= 0) {
                model.arithm(next[question.feeder()], "=", question.fed()).post();
            }
            total = exactly.isPresent()
                    ? model.intVar("total", exactly.getAsInt())
                    : model.intVar("total", 0, Math.multiplyExact(dearest, parts));
            model.sum(costs, "=", total).post();
        }

        private static int[] numbers(List<Integer> list) {
            return list.stream().mapToInt(Integer::intValue).sorted().toArray();
        }

        IntVar[] decisions() {
            List<IntVar> all = new ArrayList<>(List.of(next));
            all.addAll(List.of(in));
            all.addAll(List.of(out));
            return all.toArray(IntVar[]::new);
        }

        Round round(int costHmm) {
            List<Integer> sequence = new ArrayList<>();
            int at = 0;
            do {
                sequence.add(at);
                at = next[at].getValue();
            } while (at != 0);
            List<Pair> ports = new ArrayList<>();
            for (int i = 0; i < in.length; i++) {
                ports.add(new Pair(in[i].getValue(), out[i].getValue()));
            }
            return new Round(sequence, ports, costHmm);
        }
    }
}
