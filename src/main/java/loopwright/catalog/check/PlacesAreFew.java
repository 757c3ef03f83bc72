package loopwright.catalog.check;

import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.read.Problems;

/** A chassis has no more places than the search can tell apart: beyond that, answers would be wrong. */
final class PlacesAreFew implements Check {

    /** Most places of a chassis: the bits of a long, less two. */
    private static final int PLACES_MAX = 62;

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Chassis> chassis : items.of(Chassis.class)) {
            int places = chassis.value().inside().places().size();
            if (places > PLACES_MAX) {
                problems.add(chassis.item()
                        .problem("inside.places", places + " places", "at most " + PLACES_MAX + " a chassis", ""));
            }
        }
    }
}
