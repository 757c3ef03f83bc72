package loopwright.catalog.check;

import loopwright.catalog.part.Block;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.read.Item;
import loopwright.catalog.read.Problems;

/** What a block takes of the pressure rises with flow. */
final class LossRises implements Check {

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Block> block : items.of(Block.class)) {
            curve(block.item(), "flow.loss", block.value().flow()).mustRise(problems);
        }
        for (Items.Placed<GraphicsCard> card : items.of(GraphicsCard.class)) {
            card.value()
                    .power()
                    .block()
                    .ifPresent(
                            flow -> curve(card.item(), "power.block.loss", flow).mustRise(problems));
        }
    }

    private static Curve curve(Item item, String path, Block.Flow flow) {
        return new Curve(
                item,
                path,
                flow.loss().stream()
                        .map(p -> new Curve.Point(p.flowLPerMin(), p.lossKPa()))
                        .toList(),
                "flow_L_per_min",
                "loss_kPa");
    }
}
