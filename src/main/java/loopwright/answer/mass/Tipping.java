package loopwright.answer.mass;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import loopwright.answer.mass.SpringFeet.Place;

/**
 * How far a machine may be tilted before it falls over an edge of the polygon that its feet make.
 *
 * <p>Over an edge it falls when its centre stands above it: tan(angle) = distance to the edge ÷ height over the desk.
 */
public final class Tipping {

    private Tipping() {}

    /** An edge between two feet; the angle is negative where the centre is outside. */
    public record Edge(Place from, Place to, double angleDeg) {}

    /**
     * The edge it falls over first.
     *
     * @param heightMm of the centre over the desk, above 0
     * @throws IllegalArgumentException if the feet make no polygon or the height is not above 0
     */
    public static Edge least(List<Place> feet, Place centre, double heightMm) {
        if (!(heightMm > 0)) {
            throw new IllegalArgumentException("heightMm must be above 0 but was " + heightMm);
        }
        List<Place> hull = hull(feet);
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < hull.size(); i++) {
            Place from = hull.get(i);
            Place to = hull.get((i + 1) % hull.size());
            double length = StrictMath.hypot(to.xMm() - from.xMm(), to.yMm() - from.yMm());
            double inside = cross(from, to, centre) / length;
            edges.add(new Edge(from, to, StrictMath.toDegrees(StrictMath.atan2(inside, heightMm))));
        }
        return edges.stream()
                .min(Comparator.comparingDouble(Edge::angleDeg))
                .filter(e -> hull.size() > 2)
                .orElseThrow(() -> new IllegalArgumentException("feet in one line: " + feet));
    }

    /** The corners of the feet's convex hull, counter-clockwise seen from above; no corner in a line with its neighbours. */
    static List<Place> hull(List<Place> feet) {
        List<Place> sorted = feet.stream()
                .distinct()
                .sorted(Comparator.comparingDouble(Place::xMm).thenComparingDouble(Place::yMm))
                .toList();
        if (sorted.size() < 2) {
            return sorted;
        }
        List<Place> out = new ArrayList<>(half(sorted));
        List<Place> back = new ArrayList<>(sorted);
        java.util.Collections.reverse(back);
        out.addAll(half(back));
        return List.copyOf(out);
    }

    private static List<Place> half(List<Place> sorted) {
        List<Place> out = new ArrayList<>();
        for (Place place : sorted) {
            while (out.size() > 1 && cross(out.get(out.size() - 2), out.get(out.size() - 1), place) <= 0) {
                out.remove(out.size() - 1);
            }
            out.add(place);
        }
        out.remove(out.size() - 1);
        return out;
    }

    private static double cross(Place from, Place to, Place at) {
        return (to.xMm() - from.xMm()) * (at.yMm() - from.yMm()) - (to.yMm() - from.yMm()) * (at.xMm() - from.xMm());
    }
}
