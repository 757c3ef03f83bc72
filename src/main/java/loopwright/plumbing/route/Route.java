package loopwright.plumbing.route;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The way of a run.
 *
 * @param points from face to face, one where it turns
 * @param bends how many bends its tube makes
 * @param elbows how many elbows it has at its ends
 * @param fittings the room that its end fittings take
 * @param costHmm its length and what bends and elbows count
 */
public record Route(List<Where> points, int bends, int elbows, List<Solid> fittings, int costHmm) {

    /** Copies. */
    public Route {
        points = List.copyOf(points);
        fittings = List.copyOf(fittings);
    }

    /** From face to face along its axis, hundredths of a millimetre; bends are not cut short. */
    public int lengthHmm() {
        int sum = 0;
        for (int i = 1; i < points.size(); i++) {
            sum += points.get(i - 1).wayTo(points.get(i));
        }
        return sum;
    }

    /** The same from its other end. */
    public Route reversed() {
        List<Where> back = new ArrayList<>(points);
        Collections.reverse(back);
        return new Route(back, bends, elbows, fittings, costHmm);
    }

    /** The room that tube and fittings take, for runs that are laid later. */
    public List<Solid> room(String name, int radiusHmm) {
        List<Solid> out = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            out.add(Solid.around(name, points.get(i - 1), points.get(i), 0).grown(radiusHmm));
        }
        fittings.forEach(f -> out.add(new Solid(name, f.low(), f.high())));
        return out;
    }
}
