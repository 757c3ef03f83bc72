package loopwright.catalog.check;

import loopwright.catalog.part.Supply;
import loopwright.catalog.read.Problems;
import loopwright.catalog.standard.Standards;

/**
 * A supply's rails make up its rating: 12 V alone brings no more than it, all rails together no less; its 16-pin plug has one of the
 * published codings.
 */
final class RailsCarryRating implements Check {

    /** Volts of the main rail, by definition. */
    private static final double TWELVE_V = 12;

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Supply> supply : items.of(Supply.class)) {
            supply.value().rails().ifPresent(rails -> {
                check(supply, rails, problems);
                items.findOnly(Standards.class)
                        .flatMap(Standards::electric)
                        .ifPresent(standard -> rails.sixteenPinW()
                                .filter(w -> !SixteenPinCodings.are(standard.card(), w))
                                .ifPresent(w -> problems.add(supply.item()
                                        .problem(
                                                "rails.sixteen_pin_W",
                                                Integer.toString(w),
                                                "a coding of the 16-pin plug: "
                                                        + SixteenPinCodings.words(standard.card()),
                                                ""))));
            });
        }
    }

    private static void check(Items.Placed<Supply> supply, Supply.Rails rails, Problems problems) {
        double ratedW = supply.value().output().ratedW();
        double twelveW = rails.twelveVoltA() * TWELVE_V;
        if (!(twelveW <= ratedW)) {
            problems.add(supply.item()
                    .problem(
                            "rails.twelve_volt_A",
                            Curve.plain(rails.twelveVoltA()) + ", " + Curve.plain(twelveW) + " W",
                            "no more than its rating, " + Curve.plain(ratedW) + " W",
                            "A supply labelled 650 W often has 52 A."));
        }
        if (!(twelveW + rails.lowW() >= ratedW)) {
            problems.add(supply.item()
                    .problem(
                            "rails.low_W",
                            Curve.plain(rails.lowW()) + " with " + Curve.plain(twelveW) + " W on 12 V",
                            "at least " + Curve.plain(ratedW - twelveW) + ": all rails together bring the rating",
                            ""));
        }
    }
}
