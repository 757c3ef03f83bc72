package loopwright.oracle.choco;

import java.util.ArrayList;
import java.util.Map;
import loopwright.catalog.basis.Axis;
import loopwright.quantity.Dimension;

/** What has to be between two edges beyond the need: nothing, or what keeps a place from being tight. */
record CBeyond(boolean noTightPlaces, Map<Axis, Dimension> inside) {

    private static final int TWO_MM = 200;

    int between(Axis axis, CEdge one, CEdge other) {
        if (!noTightPlaces) {
            return 0;
        }
        var doubts = new ArrayList<Integer>(one.doubt());
        doubts.addAll(other.doubt());
        if (one.fromFarWall() != other.fromFarWall()) {
            int size = inside.get(axis).plusMinusHmm();
            doubts.add(size);
            doubts.add(size);
        }
        int halves = doubts.stream().mapToInt(d -> d).sum();
        return Math.max(TWO_MM, halves / 2 + halves % 2);
    }

    int toLowWall(Axis axis, CEdge low) {
        return between(axis, low, CEdge.ORIGIN);
    }

    int toHighWall(Axis axis, CEdge high) {
        return between(axis, new CEdge(0, java.util.List.of(), true), high);
    }
}
