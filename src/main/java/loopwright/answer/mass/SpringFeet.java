package loopwright.answer.mass;

import java.util.ArrayList;
import java.util.List;

/**
 * What each of some feet carries of a rigid machine, kg.
 *
 * <p>Three feet: statics alone decides. More: the machine is taken as rigid and the feet as equal springs on a flat desk, so
 * what a foot carries is p(x, y) = a + b·x + c·y; with Σp = m, Σp·x = m·x̄ and Σp·y = m·ȳ that is the least-squares plane
 * through the feet, three linear equations. For three feet it is the exact answer. A foot cannot pull: one that would is
 * taken away (it lifts off) and the rest is solved again.
 *
 * <p><b>Source.</b> Statics; that feet are equal springs is assumed.
 */
public final class SpringFeet {

    private static final int LEAST = 3;

    private SpringFeet() {}

    /** A place on the desk, mm. */
    public record Place(double xMm, double yMm) {}

    /**
     * Loads in the order of the feet; 0 for one that lifts off.
     *
     * @throws IllegalArgumentException if fewer than three, or all in one line
     */
    public static List<Double> loadsKg(List<Place> feet, double massKg, Place centre) {
        List<Integer> down = new ArrayList<>();
        for (int i = 0; i < feet.size(); i++) {
            down.add(i);
        }
        while (true) {
            List<Place> on = down.stream().map(feet::get).toList();
            List<Double> loads = plane(on, massKg, centre);
            int least = 0;
            for (int i = 1; i < loads.size(); i++) {
                least = loads.get(i) < loads.get(least) ? i : least;
            }
            boolean last = down.size() == LEAST || stillThree(on, least);
            if (loads.get(least) >= 0 || last) {
                List<Double> out = new ArrayList<>();
                for (int i = 0; i < feet.size(); i++) {
                    int at = down.indexOf(i);
                    out.add(at < 0 ? Double.valueOf(0) : loads.get(at));
                }
                return List.copyOf(out);
            }
            down.remove(least);
        }
    }

    /** Whether taking one away would leave the others in one line. */
    private static boolean stillThree(List<Place> on, int away) {
        List<Place> rest = new ArrayList<>(on);
        rest.remove(away);
        return Tipping.hull(rest).size() < LEAST;
    }

    private static List<Double> plane(List<Place> feet, double massKg, Place centre) {
        if (feet.size() < LEAST || Tipping.hull(feet).size() < LEAST) {
            throw new IllegalArgumentException("at least three feet that are not in one line, but were " + feet);
        }
        double meanX = feet.stream().mapToDouble(Place::xMm).sum() / feet.size();
        double meanY = feet.stream().mapToDouble(Place::yMm).sum() / feet.size();
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (Place foot : feet) {
            xx += (foot.xMm() - meanX) * (foot.xMm() - meanX);
            xy += (foot.xMm() - meanX) * (foot.yMm() - meanY);
            yy += (foot.yMm() - meanY) * (foot.yMm() - meanY);
        }
        double momentX = massKg * (centre.xMm() - meanX);
        double momentY = massKg * (centre.yMm() - meanY);
        double determinant = xx * yy - xy * xy;
        double b = (momentX * yy - momentY * xy) / determinant;
        double c = (momentY * xx - momentX * xy) / determinant;
        List<Double> out = new ArrayList<>();
        for (Place foot : feet) {
            out.add(massKg / feet.size() + b * (foot.xMm() - meanX) + c * (foot.yMm() - meanY));
        }
        return out;
    }
}
