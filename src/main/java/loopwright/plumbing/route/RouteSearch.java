package loopwright.plumbing.route;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Heading;

/**
 * Cheapest ways from one port over a lattice (Dijkstra; towards one goal with the distance to it as a lower bound).
 *
 * <p>A state is a crossing and the heading it is reached with, where enough straight tube lies behind to bend. From it the
 * tube goes on to the next crossing, or bends and then runs straight for at least a middle leg.
 */
final class RouteSearch {

    private static final int FAR = Integer.MAX_VALUE;
    private static final Heading[] HEADINGS = Heading.values();

    private final Lattice lattice;
    private final Space space;
    private final TubeShape tube;
    private final int[] cost;
    private final int[] before;
    private final Map<Integer, Leave> starts = new HashMap<>();
    private final Heap heap = new Heap();

    RouteSearch(Lattice lattice, Space space, TubeShape tube) {
        this.lattice = lattice;
        this.space = space;
        this.tube = tube;
        this.cost = new int[lattice.nodes() * HEADINGS.length];
        this.before = new int[cost.length];
        Arrays.fill(cost, FAR);
    }

    /** A state from which a port is reached, the way into it, and what is still to pay. */
    private record Finish(int state, Leave into, int bendNode, int extraHmm) {}

    /** The best way from one port to each of others; empty where there is none. */
    List<Optional<Route>> routes(End from, List<End> to) {
        List<Leave> out = Leave.of(from, tube, space);
        out.forEach(this::start);
        List<List<Finish>> finishes = new ArrayList<>();
        List<List<Leave>> ins = new ArrayList<>();
        for (End end : to) {
            List<Leave> in = Leave.of(end, tube, space);
            ins.add(in);
            finishes.add(finishes(in));
        }
        run(to.size() == 1 ? finishes.get(0) : List.of());
        List<Optional<Route>> routes = new ArrayList<>();
        for (int i = 0; i < to.size(); i++) {
            routes.add(best(finishes.get(i), straight(out, ins.get(i))));
        }
        return routes;
    }

    private void start(Leave leave) {
        int node = lattice.nodeBeyond(leave.mouth(), leave.heading(), tube.endLeg());
        if (node >= 0 && !lattice.isBlocked(node) && space.isFree(leave.mouth(), lattice.at(node), tube.radius())) {
            int state = node * HEADINGS.length + Compass.number(leave.heading());
            int paid = leave.costHmm() + leave.lengthHmm() + leave.mouth().wayTo(lattice.at(node));
            if (paid < cost[state]) {
                cost[state] = paid;
                before[state] = -1;
                starts.put(state, leave);
                heap.add(paid, state);
            }
        }
    }

    private List<Finish> finishes(List<Leave> in) {
        List<Finish> out = new ArrayList<>();
        for (Leave leave : in) {
            int node = lattice.nodeBeyond(leave.mouth(), leave.heading(), tube.endLeg());
            if (node < 0 || lattice.isBlocked(node) || !space.isFree(leave.mouth(), lattice.at(node), tube.radius())) {
                continue;
            }
            int rest = leave.costHmm() + leave.lengthHmm() + leave.mouth().wayTo(lattice.at(node));
            Heading against = Compass.against(leave.heading());
            out.add(new Finish(node * HEADINGS.length + Compass.number(against), leave, -1, rest));
            for (int far : lattice.ray(node, leave.heading())) {
                int more = rest + tube.bends().asTube() + lattice.at(far).wayTo(lattice.at(node));
                for (Heading heading : HEADINGS) {
                    if (heading.axis() != leave.heading().axis()) {
                        out.add(new Finish(far * HEADINGS.length + Compass.number(heading), leave, far, more));
                    }
                }
            }
        }
        return out;
    }

    /** Spreads from the starts; with a goal, until nothing can be better than the best way to it. */
    private void run(List<Finish> goal) {
        Map<Integer, Integer> extra = new HashMap<>();
        goal.forEach(f -> extra.merge(f.state(), f.extraHmm(), Math::min));
        Bounds bounds = new Bounds(goal);
        Heap open = new Heap();
        while (!heap.isEmpty()) {
            long key = heap.take();
            open.add(Heap.cost(key) + bounds.toGoal(Heap.state(key) / HEADINGS.length), Heap.state(key));
        }
        int best = FAR;
        while (!open.isEmpty()) {
            long key = open.take();
            int state = Heap.state(key);
            int node = state / HEADINGS.length;
            if (Heap.cost(key) >= best) {
                return;
            }
            if (Heap.cost(key) == cost[state] + bounds.toGoal(node)) {
                Integer rest = extra.get(state);
                if (rest != null) {
                    best = Math.min(best, cost[state] + rest);
                }
                spread(state, open, bounds);
            }
        }
    }

    private void spread(int state, Heap open, Bounds bounds) {
        int node = state / HEADINGS.length;
        Heading heading = HEADINGS[state % HEADINGS.length];
        for (Heading next : HEADINGS) {
            if (next == heading) {
                reach(state, node, next, 1, 0, open, bounds);
            } else if (next.axis() != heading.axis()) {
                reach(state, node, next, tube.middleLeg(), tube.bends().asTube(), open, bounds);
            }
        }
    }

    /** Goes on from a crossing to the first one that is so far off, if all between are free. */
    private void reach(int state, int node, Heading heading, int leastHmm, int payHmm, Heap open, Bounds bounds) {
        Axis axis = heading.axis();
        int index = lattice.index(node, axis);
        int stride = heading.sign() * lattice.stride(axis);
        int from = lattice.line(axis, index);
        int at = node;
        int way = 0;
        while (way < leastHmm) {
            index += heading.sign();
            at += stride;
            if (index < 0 || index >= lattice.count(axis) || lattice.isBlocked(at)) {
                return;
            }
            way = Math.abs(lattice.line(axis, index) - from);
        }
        int there = at * HEADINGS.length + Compass.number(heading);
        int paid = cost[state] + way + payHmm;
        if (paid < cost[there]) {
            cost[there] = paid;
            before[there] = state;
            open.add(paid + bounds.toGoal(at), there);
        }
    }

    /** A lower bound of the way to a goal: along each axis, to the nearest crossing it can be reached from. */
    private final class Bounds {
        private final int[] low = new int[3];
        private final int[] high = new int[3];

        Bounds(List<Finish> goal) {
            for (Axis axis : Axis.values()) {
                int least = goal.isEmpty() ? Integer.MIN_VALUE / 2 : FAR;
                int most = goal.isEmpty() ? FAR / 2 : Integer.MIN_VALUE;
                for (Finish finish : goal) {
                    int value = lattice.coordinate(finish.state() / HEADINGS.length, axis);
                    least = Math.min(least, value);
                    most = Math.max(most, value);
                }
                low[Compass.number(axis)] = least;
                high[Compass.number(axis)] = most;
            }
        }

        int toGoal(int node) {
            int sum = 0;
            for (int a = 0; a < low.length; a++) {
                int value = lattice.coordinate(node, AXES[a]);
                sum += Math.max(0, Math.max(low[a] - value, value - high[a]));
            }
            return sum;
        }
    }

    private static final Axis[] AXES = Axis.values();

    private Optional<Route> best(List<Finish> finishes, Optional<Route> straight) {
        Optional<Finish> best = Optional.empty();
        int least = straight.map(Route::costHmm).orElse(FAR);
        for (Finish finish : finishes) {
            int paid = cost[finish.state()];
            if (paid != FAR && paid + finish.extraHmm() < least) {
                least = paid + finish.extraHmm();
                best = Optional.of(finish);
            }
        }
        int all = least;
        return best.map(f -> route(f, all)).or(() -> straight);
    }

    /** Two mouths that look at each other, with nothing but straight tube between. */
    private Optional<Route> straight(List<Leave> out, List<Leave> in) {
        Optional<Route> best = Optional.empty();
        for (Leave a : out) {
            for (Leave b : in) {
                Axis axis = a.heading().axis();
                boolean facing = b.heading() == Compass.against(a.heading())
                        && a.mouth().with(axis, 0).equals(b.mouth().with(axis, 0))
                        && (b.mouth().along(axis) - a.mouth().along(axis))
                                        * a.heading().sign()
                                > 0;
                if (facing && space.isFree(a.mouth(), b.mouth(), tube.radius())) {
                    Route route = made(a, List.of(), b);
                    if (best.isEmpty() || route.costHmm() < best.get().costHmm()) {
                        best = Optional.of(route);
                    }
                }
            }
        }
        return best;
    }

    private Route route(Finish finish, int costHmm) {
        List<Where> turns = new ArrayList<>();
        int state = finish.state();
        if (finish.bendNode() >= 0) {
            turns.add(lattice.at(finish.bendNode()));
        }
        while (before[state] >= 0) {
            int earlier = before[state];
            if (earlier % HEADINGS.length != state % HEADINGS.length) {
                turns.add(lattice.at(earlier / HEADINGS.length));
            }
            state = earlier;
        }
        Collections.reverse(turns);
        Leave out = starts.get(state);
        if (out == null) {
            throw new IllegalStateException("a way that starts nowhere");
        }
        Route made = made(out, turns, finish.into());
        if (made.costHmm() != costHmm) {
            throw new IllegalStateException("a way of " + made.costHmm() + " was found at " + costHmm);
        }
        return made;
    }

    private Route made(Leave out, List<Where> bends, Leave in) {
        List<Where> points = new ArrayList<>();
        points.add(out.end().at());
        out.elbow().ifPresent(points::add);
        points.addAll(bends);
        in.elbow().ifPresent(points::add);
        points.add(in.end().at());
        List<Solid> fittings = new ArrayList<>(out.fittings());
        fittings.addAll(in.fittings());
        int elbows = (out.elbow().isPresent() ? 1 : 0) + (in.elbow().isPresent() ? 1 : 0);
        Route route = new Route(points, bends.size(), elbows, fittings, 0);
        int cost = route.lengthHmm() + bends.size() * tube.bends().asTube() + out.costHmm() + in.costHmm();
        return new Route(points, bends.size(), elbows, fittings, cost);
    }
}
