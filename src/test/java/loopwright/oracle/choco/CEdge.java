package loopwright.oracle.choco;

import java.util.ArrayList;
import java.util.List;
import loopwright.quantity.Dimension;

/**
 * A coordinate in hundredths, and the dimensions in it that may be off: a half of one is listed once, a whole one twice.
 *
 * @param doubt each with the way it is measured: from the far wall, or not
 */
record CEdge(int at, List<Integer> doubt, boolean fromFarWall) implements Comparable<CEdge> {

    static final CEdge ORIGIN = new CEdge(0, List.of(), false);

    static CEdge sharp(int at) {
        return new CEdge(at, List.of(), false);
    }

    static CEdge of(Dimension d) {
        return new CEdge(d.valueHmm(), List.of(d.plusMinusHmm(), d.plusMinusHmm()), false);
    }

    static CEdge halfOf(Dimension d) {
        return new CEdge(d.valueHmm() / 2, List.of(d.plusMinusHmm()), false);
    }

    /** This and {@code sign} times another. */
    CEdge and(int sign, CEdge other) {
        List<Integer> all = new ArrayList<>(doubt);
        all.addAll(other.doubt);
        return new CEdge(at + sign * other.at, all, fromFarWall || other.fromFarWall);
    }

    CEdge and(CEdge other) {
        return and(1, other);
    }

    CEdge less(CEdge other) {
        return and(-1, other);
    }

    CEdge negative() {
        return new CEdge(-at, doubt, fromFarWall);
    }

    @Override
    public int compareTo(CEdge other) {
        return Integer.compare(at, other.at);
    }
}
