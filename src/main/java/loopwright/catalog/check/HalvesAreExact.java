package loopwright.catalog.check;

import loopwright.catalog.part.Block;
import loopwright.catalog.part.Cover;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.read.Item;
import loopwright.catalog.read.Problems;
import loopwright.quantity.Dimension;
import loopwright.quantity.Hundredths;

/** Dimensions that are halved about a centre are even hundredths of a millimetre, so that no half is rounded. */
final class HalvesAreExact implements Check {

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Radiator> radiator : items.of(Radiator.class)) {
            even(radiator.item(), "body.width_mm", radiator.value().body().widthMm(), problems);
        }
        for (Items.Placed<Block> block : items.of(Block.class)) {
            even(block.item(), "body.length_mm", block.value().body().lengthMm(), problems);
            even(block.item(), "body.width_mm", block.value().body().widthMm(), problems);
        }
        for (Items.Placed<Cover> cover : items.of(Cover.class)) {
            even(cover.item(), "body.length_mm", cover.value().body().lengthMm(), problems);
            even(cover.item(), "body.width_mm", cover.value().body().widthMm(), problems);
        }
    }

    private static void even(Item item, String path, Dimension dimension, Problems problems) {
        if (dimension.valueHmm() % 2 != 0) {
            problems.add(item.problem(
                    path,
                    Hundredths.text(dimension.valueHmm()),
                    "an even number of hundredths of a millimetre",
                    "It is halved about the centre: round the last digit to an even one."));
        }
    }
}
