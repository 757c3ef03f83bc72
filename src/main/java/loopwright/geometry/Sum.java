package loopwright.geometry;

import java.util.ArrayList;
import java.util.List;
import loopwright.quantity.Dimension;

/**
 * A coordinate as a sum of ±1 or ±½ times named dimensions.
 *
 * <p>Units: hundredths of a millimetre. Kept as names so that a later question ("which dimension should I measure?")
 * can still be asked of it; the solver takes the value.
 *
 * @param terms the summands, in the order they were added
 */
public record Sum(List<Term> terms) {

    /** The empty sum: the datum itself. */
    public static final Sum ZERO = new Sum(List.of());

    /**
     * One summand.
     *
     * @param halves how many halves of the dimension: ±2 for the whole, ±1 for half
     * @param name where the dimension comes from, like {@code radiator.r-240-30.thickness}
     */
    public record Term(int halves, String name, Dimension dimension) {}

    /** Copies. */
    public Sum {
        terms = List.copyOf(terms);
    }

    /** This sum and the whole dimension. */
    public Sum plus(String name, Dimension dimension) {
        return with(new Term(2, name, dimension));
    }

    /** This sum less the whole dimension. */
    public Sum minus(String name, Dimension dimension) {
        return with(new Term(-2, name, dimension));
    }

    /** This sum and a signed number of halves of the dimension. */
    public Sum plusHalves(int halves, String name, Dimension dimension) {
        return with(new Term(halves, name, dimension));
    }

    /** This sum and another, each of whose terms is multiplied by a sign (+1 or −1). */
    public Sum plus(int sign, Sum other) {
        List<Term> all = new ArrayList<>(terms);
        for (Term term : other.terms) {
            all.add(new Term(sign * term.halves(), term.name(), term.dimension()));
        }
        return new Sum(all);
    }

    private Sum with(Term term) {
        List<Term> all = new ArrayList<>(terms);
        all.add(term);
        return new Sum(all);
    }

    /** The value; a half hundredth, which only a mid-plane can have, is rounded down. */
    public int valueHmm() {
        long halves = 0;
        for (Term term : terms) {
            halves += (long) term.halves() * term.dimension().valueHmm();
        }
        return Math.toIntExact(Math.floorDiv(halves, 2L));
    }

    /** Names of the dimensions in it that are not known. */
    public List<String> unknowns() {
        return terms.stream()
                .filter(t -> t.dimension().isUnknown())
                .map(Term::name)
                .distinct()
                .toList();
    }
}
