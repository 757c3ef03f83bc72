package loopwright.power.header;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.catalog.part.Lead;
import loopwright.catalog.part.Plug;
import loopwright.power.header.WiringPlan.Branch;

/**
 * The cheapest way to feed fans from headers: header by header, with every lead and every number of fans of each group on it.
 *
 * <p>Exact: what is best for the headers that are left depends only on the fans and SATA plugs that are left, and is kept.
 */
final class FanSearch {

    private final WiringTask task;
    private final List<HeaderAt> headers;
    private final Map<Left, Optional<Best>> known = new HashMap<>();

    FanSearch(WiringTask task, List<HeaderAt> headers) {
        this.task = task;
        this.headers = headers;
    }

    /** What is left to do. */
    private record Left(int header, List<Integer> fans, int sata) {}

    /**
     * A way to do it.
     *
     * @param names of the leads, sorted
     * @param mixed groups on headers, counted header by header
     */
    record Best(long cents, List<String> names, int mixed, List<Branch> branches) implements Comparable<Best> {

        static final Best NOTHING = new Best(0, List.of(), 0, List.of());

        /** This after one more header. */
        Best after(Branch branch) {
            List<String> all = new ArrayList<>(names);
            branch.lead().ifPresent(l -> all.add(l.id()));
            Collections.sort(all);
            List<Branch> more = new ArrayList<>(branches.size() + 1);
            more.add(branch);
            more.addAll(branches);
            long price = branch.lead().map(l -> l.buy().priceCents()).orElse(0L);
            int groups = (int) branch.counts().stream().filter(c -> c > 0).count();
            return new Best(cents + price, List.copyOf(all), mixed + groups, more);
        }

        /** Cheapest, then fewest leads, then by their names, then groups kept together. */
        @Override
        public int compareTo(Best other) {
            if (cents != other.cents) {
                return Long.compare(cents, other.cents);
            }
            if (names.size() != other.names.size()) {
                return Integer.compare(names.size(), other.names.size());
            }
            for (int i = 0; i < names.size(); i++) {
                int order = names.get(i).compareTo(other.names.get(i));
                if (order != 0) {
                    return order;
                }
            }
            return Integer.compare(mixed, other.mixed);
        }
    }

    /** The best way with so many SATA plugs; none if there is no way. */
    Optional<Best> find(int sata) {
        return find(new Left(0, task.fans().stream().map(FanGroup::count).toList(), sata));
    }

    private Optional<Best> find(Left left) {
        Optional<Best> before = known.get(left);
        if (before == null) {
            before = work(left);
            known.put(left, before);
        }
        return before;
    }

    private Optional<Best> work(Left left) {
        if (left.fans().stream().allMatch(c -> c == 0)) {
            return Optional.of(Best.NOTHING);
        }
        if (left.header() == headers.size()) {
            return Optional.empty();
        }
        Optional<Best> best = find(new Left(left.header() + 1, left.fans(), left.sata()));
        HeaderAt header = headers.get(left.header());
        for (Outlets outlets : outlets(header)) {
            if (outlets.sata() <= left.sata()) {
                for (List<Integer> counts : counts(left.fans(), outlets)) {
                    Branch branch =
                            new Branch(header, outlets.lead(), counts, startMilliA(counts), outlets.limitMilliA());
                    Optional<Best> rest =
                            find(new Left(left.header() + 1, less(left.fans(), counts), left.sata() - outlets.sata()));
                    best = better(best, rest.map(r -> r.after(branch)));
                }
            }
        }
        return best;
    }

    private static Optional<Best> better(Optional<Best> one, Optional<Best> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.isPresent() ? one : other;
        }
        return other.get().compareTo(one.get()) < 0 ? other : one;
    }

    /** What a header can be made into. */
    private record Outlets(Optional<Lead> lead, int count, int limitMilliA, int sata) {}

    private List<Outlets> outlets(HeaderAt header) {
        List<Outlets> out = new ArrayList<>();
        out.add(new Outlets(Optional.empty(), 1, header.limitMilliA(), 0));
        for (Lead lead : task.leads()) {
            Optional<Integer> limit = lead.limitA().map(MilliAmps::of);
            if (lead.to() != Plug.FAN_4) {
                continue;
            }
            if (lead.kind() == Lead.Kind.SPLITTER && lead.from() == Plug.FAN_4) {
                int least = Math.min(header.limitMilliA(), limit.orElse(header.limitMilliA()));
                out.add(new Outlets(Optional.of(lead), lead.outlets(), least, 0));
            }
            if (lead.kind() == Lead.Kind.HUB && lead.from() == Plug.SATA) {
                int plug = task.limits().sataMilliA();
                out.add(new Outlets(Optional.of(lead), lead.outlets(), Math.min(plug, limit.orElse(plug)), 1));
            }
        }
        return out;
    }

    /** Every number of fans of each group, at least one fan in all, that outlets and limit take. */
    private List<List<Integer>> counts(List<Integer> left, Outlets outlets) {
        List<List<Integer>> out = new ArrayList<>();
        fill(left, outlets, new ArrayList<>(), out);
        return out;
    }

    private void fill(List<Integer> left, Outlets outlets, List<Integer> counts, List<List<Integer>> out) {
        int taken = counts.stream().mapToInt(Integer::intValue).sum();
        if (taken > outlets.count() || !task.limits().allow(startMilliA(counts), outlets.limitMilliA())) {
            return;
        }
        if (counts.size() == left.size()) {
            if (taken > 0) {
                out.add(List.copyOf(counts));
            }
            return;
        }
        for (int count = left.get(counts.size()); count >= 0; count--) {
            List<Integer> more = new ArrayList<>(counts);
            more.add(count);
            fill(left, outlets, more, out);
        }
    }

    private int startMilliA(List<Integer> counts) {
        int sum = 0;
        for (int i = 0; i < counts.size(); i++) {
            sum += counts.get(i) * task.fans().get(i).startMilliA();
        }
        return sum;
    }

    private static List<Integer> less(List<Integer> left, List<Integer> counts) {
        List<Integer> out = new ArrayList<>();
        for (int i = 0; i < left.size(); i++) {
            out.add(left.get(i) - counts.get(i));
        }
        return List.copyOf(out);
    }
}
