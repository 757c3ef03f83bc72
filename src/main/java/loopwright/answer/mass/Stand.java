package loopwright.answer.mass;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.answer.mass.SpringFeet.Place;
import loopwright.catalog.chassis.Standing;

/**
 * How a machine stands on its feet and hangs on its lifting points.
 *
 * @param feet what each carries, filled
 * @param tipDeg smallest tilt that tips it over; negative: it falls as it stands
 * @param over the two feet it tips over
 * @param lifts what each lifting point carries, filled
 */
public record Stand(List<Carries> feet, double tipDeg, String over, List<Hangs> lifts) {

    private static final double HMM_PER_MM = 100;

    /** A foot and its load, kg. */
    public record Carries(String foot, double loadKg) {}

    /**
     * A lifting point and its load.
     *
     * @param madeForKg what its maker allows
     * @param wantedKg what practice wants of it
     */
    public record Hangs(String lift, String title, double loadKg, double madeForKg, double wantedKg) {
        /** Whether it is made for what practice wants. */
        public boolean holds() {
            return madeForKg >= wantedKg;
        }
    }

    /** Copies. */
    public Stand {
        feet = List.copyOf(feet);
        lifts = List.copyOf(lifts);
    }

    /**
     * Of a machine.
     *
     * @param longerMm what its feet have been made longer by
     * @param factor how many times its load a lifting point is to be made for
     */
    static Stand of(Standing standing, Masses filled, double longerMm, double factor) {
        List<Place> places = standing.feet().stream()
                .map(f -> new Place(
                        f.at().xMm().valueHmm() / HMM_PER_MM, f.at().yMm().valueHmm() / HMM_PER_MM))
                .toList();
        Place centre = new Place(filled.centre().xMm(), filled.centre().yMm());
        List<Double> loads = SpringFeet.loadsKg(places, filled.massKg(), centre);
        List<Carries> feet = new ArrayList<>();
        for (int i = 0; i < loads.size(); i++) {
            feet.add(new Carries(standing.feet().get(i).id(), loads.get(i)));
        }
        double desk = standing.feet().stream()
                        .mapToDouble(f -> f.at().zMm().valueHmm() / HMM_PER_MM)
                        .min()
                        .orElse(0)
                - longerMm;
        Tipping.Edge edge = Tipping.least(places, centre, filled.centre().zMm() - desk);
        String over = standing.feet().get(places.indexOf(edge.from())).id() + " and "
                + standing.feet().get(places.indexOf(edge.to())).id();
        return new Stand(feet, edge.angleDeg(), over, lifts(standing, filled, factor));
    }

    private static List<Hangs> lifts(Standing standing, Masses filled, double factor) {
        List<Place> places = standing.lifts().stream()
                .map(l -> new Place(
                        l.at().xMm().valueHmm() / HMM_PER_MM, l.at().yMm().valueHmm() / HMM_PER_MM))
                .toList();
        List<Double> loads = shares(
                places,
                filled.massKg(),
                new Place(filled.centre().xMm(), filled.centre().yMm()));
        List<Hangs> out = new ArrayList<>();
        for (int i = 0; i < loads.size(); i++) {
            Standing.Lift lift = standing.lifts().get(i);
            out.add(new Hangs(lift.id(), lift.title(), loads.get(i), lift.carriesKg(), factor * loads.get(i)));
        }
        return out;
    }

    /** One point carries all, two share as a lever does (none less than nothing), more as feet do. */
    static List<Double> shares(List<Place> points, double massKg, Place centre) {
        if (points.isEmpty()) {
            return List.of();
        }
        if (points.size() == 1) {
            return List.of(massKg);
        }
        if (points.size() == 2 || Tipping.hull(points).size() < 3) {
            Place one = points.get(0);
            Place other = points.get(points.size() - 1);
            double dx = other.xMm() - one.xMm();
            double dy = other.yMm() - one.yMm();
            double way = ((centre.xMm() - one.xMm()) * dx + (centre.yMm() - one.yMm()) * dy) / (dx * dx + dy * dy);
            double share = Math.max(0, Math.min(1, way));
            List<Double> out = new ArrayList<>();
            for (int i = 0; i < points.size(); i++) {
                boolean first = i == 0;
                boolean last = i == points.size() - 1;
                out.add(first ? massKg * (1 - share) : last ? massKg * share : 0.0);
            }
            return out;
        }
        return SpringFeet.loadsKg(points, massKg, centre);
    }

    /** The largest load of a foot over the smallest; absent where one carries nothing. */
    public Optional<Double> unevenness() {
        double most = feet.stream().mapToDouble(Carries::loadKg).max().orElse(0);
        double least = feet.stream().mapToDouble(Carries::loadKg).min().orElse(0);
        return least > 0 ? Optional.of(most / least) : Optional.empty();
    }
}
