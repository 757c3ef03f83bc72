package loopwright.catalog.check;

import java.util.List;
import loopwright.catalog.part.Supply;
import loopwright.catalog.read.Problems;

/** Points of a supply's noise go up in load, never down in level, and not above what it makes at most. */
final class SupplyNoiseRises implements Check {

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Supply> supply : items.of(Supply.class)) {
            List<Supply.NoisePoint> points = supply.value().noise();
            for (int i = 0; i < points.size(); i++) {
                Supply.NoisePoint here = points.get(i);
                double mostDBA = supply.value().output().noiseMaxDBA();
                if (i > 0 && !(here.loadPercent() > points.get(i - 1).loadPercent())) {
                    note(
                            supply,
                            i,
                            "load_percent",
                            here.loadPercent(),
                            points.get(i - 1).loadPercent(),
                            problems);
                }
                if (i > 0 && !(here.noiseDBA() >= points.get(i - 1).noiseDBA())) {
                    note(
                            supply,
                            i,
                            "noise_dBA",
                            here.noiseDBA(),
                            points.get(i - 1).noiseDBA(),
                            problems);
                }
                if (!(here.noiseDBA() <= mostDBA)) {
                    problems.add(supply.item()
                            .problem(
                                    "noise[" + i + "].noise_dBA",
                                    Curve.plain(here.noiseDBA()),
                                    "at most its noise_max_dBA, " + Curve.plain(mostDBA),
                                    ""));
                }
            }
        }
    }

    private static void note(
            Items.Placed<Supply> supply, int i, String field, double here, double before, Problems problems) {
        problems.add(supply.item()
                .problem(
                        "noise[" + i + "]." + field,
                        Curve.plain(here) + " after " + Curve.plain(before),
                        field.startsWith("load") ? "a load that rises from point to point" : "a level that never falls",
                        ""));
    }
}
