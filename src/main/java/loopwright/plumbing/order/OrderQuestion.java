package loopwright.plumbing.order;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Which way round?
 *
 * @param parts what is passed one after the other
 * @param feeder the part that comes directly before the fed one; −1 for none
 * @param fed the part directly behind the feeder; −1 for none
 * @param costs row: the port coolant goes out at; column: the port it comes in at; numbers of ports as in {@code parts}
 */
public record OrderQuestion(List<Stop> parts, int feeder, int fed, List<List<Integer>> costs) {

    /** Copies, and asks for ports to go in and out at. */
    public OrderQuestion {
        parts = List.copyOf(parts);
        costs = costs.stream().map(List::copyOf).toList();
        for (Stop stop : parts) {
            if (stop.pairs().isEmpty()) {
                throw new IllegalArgumentException(
                        "a part of the loop has no port to come in at and another to go out at");
            }
        }
    }

    /**
     * A part.
     *
     * @param in ports where coolant may come in
     * @param out ports where it may go out
     */
    public record Stop(List<Integer> in, List<Integer> out) {
        /** Copies. */
        public Stop {
            in = List.copyOf(in);
            out = List.copyOf(out);
        }

        /** Every choice of a port in and another out. */
        public List<Pair> pairs() {
            List<Pair> all = new ArrayList<>();
            in.forEach(i -> out.stream().filter(o -> !o.equals(i)).forEach(o -> all.add(new Pair(i, o))));
            return all;
        }
    }

    /** A port in and a port out. */
    public record Pair(int in, int out) {}

    /**
     * A way round.
     *
     * @param sequence the parts, the first one first
     * @param ports of each part, in the parts' own order
     */
    public record Round(List<Integer> sequence, List<Pair> ports, int costHmm) {
        /** Copies. */
        public Round {
            sequence = List.copyOf(sequence);
            ports = List.copyOf(ports);
        }
    }

    int portCount() {
        return 1
                + parts.stream()
                        .flatMap(p -> Stream.concat(p.in().stream(), p.out().stream()))
                        .mapToInt(Integer::intValue)
                        .max()
                        .orElse(0);
    }
}
