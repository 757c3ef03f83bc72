package loopwright.catalog.check;

import java.util.List;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.read.Item;
import loopwright.catalog.read.Problems;

/** What a block or a radiator takes of the coolant's pressure rises with flow, and what a core takes of the air's. */
final class LossRises implements Check {

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Block> block : items.of(Block.class)) {
            curve(block.item(), "flow.loss", block.value().flow().loss()).mustRise(problems);
        }
        for (Items.Placed<GraphicsCard> card : items.of(GraphicsCard.class)) {
            card.value()
                    .power()
                    .block()
                    .ifPresent(flow ->
                            curve(card.item(), "power.block.loss", flow.loss()).mustRise(problems));
        }
        for (Items.Placed<Radiator> radiator : items.of(Radiator.class)) {
            Radiator.Core core = radiator.value().core();
            curve(radiator.item(), "core.loss", core.loss()).mustRise(problems);
            if (!core.measured().airLoss().isEmpty()) {
                airCurve(radiator.item(), core.measured().airLoss()).mustRise(problems);
            }
        }
    }

    private static Curve curve(Item item, String path, List<Block.LossPoint> loss) {
        return new Curve(
                item,
                path,
                loss.stream()
                        .map(p -> new Curve.Point(p.flowLPerMin(), p.lossKPa()))
                        .toList(),
                "flow_L_per_min",
                "loss_kPa");
    }

    private static Curve airCurve(Item item, List<Radiator.AirLossPoint> loss) {
        return new Curve(
                item,
                "core.measured.air_loss",
                loss.stream()
                        .map(p -> new Curve.Point(p.airflowM3PerH(), p.lossPa()))
                        .toList(),
                "airflow_m3_per_h",
                "loss_Pa");
    }
}
