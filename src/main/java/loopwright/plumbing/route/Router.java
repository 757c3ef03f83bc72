package loopwright.plumbing.route;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * Finds ways for runs of one tube through one space.
 *
 * <p>A way from A to B and one from B to A are the same way: it is looked for from the end with the smaller coordinates.
 */
public final class Router {

    private final Space space;
    private final TubeShape tube;
    private final int spacingHmm;

    /** A router on a lattice of some spacing. */
    public Router(Space space, TubeShape tube, int spacingHmm) {
        this.space = space;
        this.tube = tube;
        this.spacingHmm = spacingHmm;
    }

    /** The cheapest way between two ports, if there is one. */
    public Optional<Route> route(End from, End to) {
        if (from.compareTo(to) > 0) {
            return route(to, from).map(Route::reversed);
        }
        Lattice lattice = new Lattice(space, tube, spacingHmm, List.of(from, to));
        return new RouteSearch(lattice, space, tube).routes(from, List.of(to)).get(0);
    }

    /**
     * The cheapest ways between all pairs of ports, on one lattice.
     *
     * @return row i, column j, for j above i; empty elsewhere
     */
    public List<List<Optional<Route>>> all(List<End> ends, Collection<End> lines) {
        Lattice lattice = new Lattice(space, tube, spacingHmm, lines);
        List<List<Optional<Route>>> out = new ArrayList<>();
        for (int i = 0; i < ends.size(); i++) {
            List<End> others = ends.subList(i + 1, ends.size());
            List<Optional<Route>> row = new ArrayList<>();
            for (int j = 0; j <= i; j++) {
                row.add(Optional.empty());
            }
            if (!others.isEmpty()) {
                row.addAll(new RouteSearch(lattice, space, tube).routes(ends.get(i), others));
            }
            out.add(row);
        }
        return out;
    }
}
