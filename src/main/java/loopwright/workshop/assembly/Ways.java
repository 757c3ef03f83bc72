package loopwright.workshop.assembly;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Alternatives of which one has to be free: ways on which something leaves, or a hand or a driver comes.
 *
 * @param blockers for each alternative the pieces in it, as bits; none that holds another
 */
record Ways(List<Long> blockers) {

    /** None: nothing is known that could be free. */
    static final Ways NONE = new Ways(List.of());

    /** Keeps those that no other is part of, few blockers first. */
    Ways {
        List<Long> least = new ArrayList<>();
        blockers.stream()
                .sorted(Comparator.comparing((Long m) -> Long.bitCount(m)).thenComparing(m -> m))
                .forEach(m -> {
                    if (least.stream().noneMatch(o -> (o & ~m) == 0)) {
                        least.add(m);
                    }
                });
        blockers = List.copyOf(least);
    }

    /** One alternative. */
    static Ways one(long mask) {
        return new Ways(List.of(mask));
    }

    /** The alternatives of both. */
    Ways or(Ways other) {
        return new Ways(
                Stream.concat(blockers.stream(), other.blockers.stream()).collect(Collectors.toList()));
    }

    /** Every alternative with more in it. */
    Ways and(long more) {
        return new Ways(blockers.stream().map(m -> m | more).toList());
    }

    /** Every alternative with less in it. */
    Ways without(long less) {
        return new Ways(blockers.stream().map(m -> m & ~less).toList());
    }

    /** Those alternatives with none of these in it. */
    Ways withNone(long these) {
        return new Ways(blockers.stream().filter(m -> (m & these) == 0).toList());
    }

    /** Whether there is no alternative at all, even in an empty chassis: only a tilt or a trick may do it. */
    boolean none() {
        return blockers.isEmpty();
    }

    /** Whether one is free of what is in. What has none blocks nothing. */
    boolean free(long in) {
        return none() || blockers.stream().anyMatch(b -> (b & in) == 0);
    }

    /** What is in all of them: none is free before it is out. */
    long inAll() {
        return none() ? 0 : blockers.stream().reduce(-1L, (a, b) -> a & b);
    }

    /** Of those that are free but for what swings aside, that with the least of it: this. */
    long aside(long in, long swings) {
        return blockers.stream()
                .map(b -> b & in)
                .filter(b -> (b & ~swings) == 0)
                .min(Comparator.comparing((Long m) -> Long.bitCount(m)).thenComparing(m -> m))
                .orElse(0L);
    }
}
