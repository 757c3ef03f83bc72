package loopwright.fit.conflict;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A set of facts, each known by a small number; a value, cheap to compare.
 *
 * <p>A class, not a record, so that no array shows.
 */
public final class FactSet implements Comparable<FactSet> {

    /** The set without a fact. */
    public static final FactSet NONE = new FactSet(new long[0]);

    private static final int BITS = 64;

    private static final Comparator<FactSet> SMALLEST_FIRST =
            Comparator.comparingInt(FactSet::size).thenComparing(FactSet::numbers, FactSet::compare);

    private final long[] words;

    private FactSet(long[] words) {
        this.words = words;
    }

    /** The set of some facts. */
    public static FactSet of(int... facts) {
        FactSet out = NONE;
        for (int fact : facts) {
            out = out.with(fact);
        }
        return out;
    }

    /** The set of some facts. */
    public static FactSet of(Iterable<Integer> facts) {
        FactSet out = NONE;
        for (int fact : facts) {
            out = out.with(fact);
        }
        return out;
    }

    /** The facts 0 to count − 1. */
    public static FactSet upTo(int count) {
        return of(IntStream.range(0, count).toArray());
    }

    /** This set and one fact. */
    public FactSet with(int fact) {
        if (has(fact)) {
            return this;
        }
        long[] more = Arrays.copyOf(words, Math.max(words.length, fact / BITS + 1));
        more[fact / BITS] |= 1L << fact % BITS;
        return new FactSet(more);
    }

    /** This set without one fact. */
    public FactSet without(int fact) {
        return has(fact) ? minus(of(fact)) : this;
    }

    /** Facts in either. */
    public FactSet or(FactSet other) {
        if (other.words.length > words.length) {
            return other.or(this);
        }
        if (other.isSubsetOf(this)) {
            return this;
        }
        long[] out = words.clone();
        for (int i = 0; i < other.words.length; i++) {
            out[i] |= other.words[i];
        }
        return new FactSet(out);
    }

    /** Facts in both. */
    public FactSet and(FactSet other) {
        long[] out = Arrays.copyOf(words, Math.min(words.length, other.words.length));
        for (int i = 0; i < out.length; i++) {
            out[i] &= other.words[i];
        }
        return trimmed(out);
    }

    /** Facts in this and not in the other. */
    public FactSet minus(FactSet other) {
        long[] out = words.clone();
        for (int i = 0; i < Math.min(out.length, other.words.length); i++) {
            out[i] &= ~other.words[i];
        }
        return trimmed(out);
    }

    private static FactSet trimmed(long[] words) {
        int length = words.length;
        while (length > 0 && words[length - 1] == 0) {
            length--;
        }
        return new FactSet(length == words.length ? words : Arrays.copyOf(words, length));
    }

    /** Whether a fact is in it. */
    public boolean has(int fact) {
        return fact / BITS < words.length && (words[fact / BITS] >>> fact % BITS & 1L) != 0;
    }

    /** Whether the two share a fact. */
    public boolean meets(FactSet other) {
        for (int i = 0; i < Math.min(words.length, other.words.length); i++) {
            if ((words[i] & other.words[i]) != 0) {
                return true;
            }
        }
        return false;
    }

    /** Whether every fact of this set is in the other. */
    public boolean isSubsetOf(FactSet other) {
        for (int i = 0; i < words.length; i++) {
            long there = i < other.words.length ? other.words[i] : 0;
            if ((words[i] & ~there) != 0) {
                return false;
            }
        }
        return true;
    }

    /** How many facts. */
    public int size() {
        int size = 0;
        for (long word : words) {
            size += Long.bitCount(word);
        }
        return size;
    }

    /** Whether there is none. */
    public boolean isEmpty() {
        return words.length == 0;
    }

    /** The facts, ascending. */
    public List<Integer> numbers() {
        return IntStream.range(0, words.length * BITS).filter(this::has).boxed().toList();
    }

    private static int compare(List<Integer> a, List<Integer> b) {
        return Arrays.compare(
                a.stream().mapToInt(i -> i).toArray(),
                b.stream().mapToInt(i -> i).toArray());
    }

    /** Smaller sets first, then by their smallest facts. */
    @Override
    public int compareTo(FactSet other) {
        return SMALLEST_FIRST.compare(this, other);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FactSet set && Arrays.equals(words, set.words);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(words);
    }

    @Override
    public String toString() {
        return numbers().toString();
    }
}
