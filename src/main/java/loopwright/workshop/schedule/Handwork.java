package loopwright.workshop.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.constraints.Constraint;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.solver.variables.Task;

/**
 * The earliest end of a network with one pair of hands.
 *
 * <p>A few simple orders give a first schedule; where a bound ({@link LeastEnd}) says that none ends earlier, it is proven.
 * Otherwise Choco looks for one that ends earlier: starts, one {@code cumulative} of the hands, waits ({@link AfterWait}),
 * and for each pair that the links leave open which of the two comes first. It stops after a number of nodes, not after a
 * time, so that the answer is always the same.
 *
 * @param timing when each job starts, everything as early as its order allows
 * @param proven whether nothing ends earlier
 * @param leastEnd the step before which no schedule ends
 */
record Handwork(Timing timing, boolean proven, int leastEnd) {

    /** Nodes that are searched before the best so far is taken, unproven. */
    static final long NODES = 20_000;

    /** The earliest end, or the best that was found. */
    static Handwork of(Network network, Clock clock, long nodes) {
        OneGo goes = OneGo.of(network);
        Handwork pieces = ofPieces(goes.joined(), clock, nodes);
        return new Handwork(goes.split(pieces.timing()), pieces.proven(), pieces.leastEnd());
    }

    private static Handwork ofPieces(Network network, Clock clock, long nodes) {
        CriticalPath path = CriticalPath.of(network, clock);
        Timing best = quick(network, clock, path);
        int least = LeastEnd.of(network, clock, path, best.end());
        if (best.end() <= least) {
            return new Handwork(best, true, least);
        }
        return searched(network, clock, path, best, Math.max(least, path.end()), nodes);
    }

    private static Timing quick(Network network, Clock clock, CriticalPath path) {
        List<Integer> byLatest = path.latest();
        List<Integer> bySlack =
                IntStream.range(0, byLatest.size()).mapToObj(path::slack).toList();
        List<Integer> byLength = network.jobs().stream().map(j -> -j.steps()).toList();
        Timing best = Timing.greedy(network, clock, byLatest);
        for (List<Integer> rank : List.of(bySlack, byLength)) {
            Timing other = Timing.greedy(network, clock, rank);
            best = other.end() < best.end() ? other : best;
        }
        return best;
    }

    private static Handwork searched(
            Network network, Clock clock, CriticalPath path, Timing first, int least, long nodes) {
        List<Integer> latest = CriticalPath.latestFor(network, clock, first.end() - 1);
        for (int i = 0; i < latest.size(); i++) {
            if (latest.get(i) < path.earliest().get(i)) {
                return new Handwork(first, true, first.end());
            }
        }
        Model model = new Model("hands");
        List<IntVar> starts = new ArrayList<>();
        List<Task> tasks = new ArrayList<>();
        IntVar end = model.intVar("end", least, first.end() - 1, true);
        for (int i = 0; i < latest.size(); i++) {
            Job job = network.jobs().get(i);
            IntVar start = model.intVar(job.id(), path.earliest().get(i), latest.get(i), true);
            starts.add(start);
            if (job.steps() > 0) {
                tasks.add(model.taskVar(start, job.steps()));
            }
            model.arithm(end, ">=", start, "+", job.steps()).post();
            new Constraint("whole day", new WholeDay(start, job, clock)).post();
        }
        for (Network.Link link : network.links()) {
            Job from = network.jobs().get(link.from());
            new Constraint(
                            "wait",
                            new AfterWait(
                                    starts.get(link.from()),
                                    starts.get(link.to()),
                                    new AfterWait.Wait(from.steps(), link.waitMin(), clock)))
                    .post();
        }
        IntVar one = model.intVar(1);
        IntVar[] ones = tasks.stream().map(t -> one).toArray(IntVar[]::new);
        model.cumulative(tasks.toArray(Task[]::new), ones, one).post();
        BoolVar[] orders = orders(model, network, starts, latest);
        Solver solver = model.getSolver();
        solver.setSearch(
                Search.inputOrderUBSearch(orders),
                Search.inputOrderLBSearch(starts.toArray(IntVar[]::new)),
                Search.inputOrderLBSearch(end));
        model.setObjective(false, end);
        solver.limitNode(nodes);
        Timing best = first;
        while (solver.solve()) {
            List<Integer> found = starts.stream().map(IntVar::getValue).toList();
            Timing asFound = new Timing(found, end.getValue());
            Timing early = Timing.inOrder(network, clock, asFound.hands(network));
            best = early.end() < best.end() ? early : best;
        }
        boolean proven = !solver.isStopCriterionMet();
        return new Handwork(best, proven || best.end() <= least, proven ? best.end() : least);
    }

    /** For each pair that the links leave open: the one that has to start earlier goes first, or not. */
    private static BoolVar[] orders(Model model, Network network, List<IntVar> starts, List<Integer> latest) {
        List<int[]> pairs = new ArrayList<>();
        for (int i = 0; i < starts.size(); i++) {
            for (int j = 0; j < starts.size(); j++) {
                boolean first = latest.get(i) < latest.get(j) || (latest.get(i).equals(latest.get(j)) && i < j);
                boolean both = network.jobs().get(i).steps() > 0
                        && network.jobs().get(j).steps() > 0;
                if (first && both && !leads(network, i, j) && !leads(network, j, i)) {
                    pairs.add(new int[] {i, j});
                }
            }
        }
        pairs.sort(Comparator.comparingInt((int[] p) -> latest.get(p[0])).thenComparingInt(p -> latest.get(p[1])));
        BoolVar[] out = new BoolVar[pairs.size()];
        for (int k = 0; k < out.length; k++) {
            int i = pairs.get(k)[0];
            int j = pairs.get(k)[1];
            out[k] = model.arithm(
                            starts.get(j),
                            ">=",
                            starts.get(i),
                            "+",
                            network.jobs().get(i).steps())
                    .reify();
            BoolVar other = model.arithm(
                            starts.get(i),
                            ">=",
                            starts.get(j),
                            "+",
                            network.jobs().get(j).steps())
                    .reify();
            model.arithm(out[k], "!=", other).post();
        }
        return out;
    }

    private static boolean leads(Network network, int from, int to) {
        return network.outOf(from).stream().anyMatch(l -> l.to() == to || leads(network, l.to(), to));
    }
}
