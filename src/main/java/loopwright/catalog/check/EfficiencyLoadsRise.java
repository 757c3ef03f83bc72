package loopwright.catalog.check;

import java.util.List;
import loopwright.catalog.part.Supply;
import loopwright.catalog.read.Problems;

/** Points of a supply's efficiency go up in load: between two of them it lies on a straight line. */
final class EfficiencyLoadsRise implements Check {

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Supply> supply : items.of(Supply.class)) {
            List<Supply.EfficiencyPoint> points = supply.value().output().efficiency();
            for (int i = 1; i < points.size(); i++) {
                double before = points.get(i - 1).loadPercent();
                double here = points.get(i).loadPercent();
                if (!(here > before)) {
                    problems.add(supply.item()
                            .problem(
                                    "output.efficiency[" + i + "].load_percent",
                                    Curve.plain(here) + " after " + Curve.plain(before),
                                    "a load that rises from point to point",
                                    ""));
                }
            }
        }
    }
}
