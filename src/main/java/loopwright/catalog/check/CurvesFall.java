package loopwright.catalog.check;

import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Pump;
import loopwright.catalog.read.Problems;

/** A fan's pressure and a pump's head fall as flow rises. */
final class CurvesFall implements Check {

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Fan> fan : items.of(Fan.class)) {
            new Curve(
                            fan.item(),
                            "air.curve",
                            fan.value().air().curve().stream()
                                    .map(p -> new Curve.Point(p.flowM3PerH(), p.pressurePa()))
                                    .toList(),
                            "flow_m3_per_h",
                            "pressure_Pa")
                    .mustFall(problems);
        }
        for (Items.Placed<Pump> pump : items.of(Pump.class)) {
            new Curve(
                            pump.item(),
                            "water.curve",
                            pump.value().water().curve().stream()
                                    .map(p -> new Curve.Point(p.flowLPerMin(), p.headKPa()))
                                    .toList(),
                            "flow_L_per_min",
                            "head_kPa")
                    .mustFall(problems);
        }
    }
}
