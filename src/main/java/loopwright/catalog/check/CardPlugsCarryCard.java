package loopwright.catalog.check;

import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.read.Problems;
import loopwright.catalog.standard.StandardElectric.CardFeeds;
import loopwright.catalog.standard.Standards;

/** A card's slot and plugs may carry what it draws at worst; its 16-pin plug has one of the published codings. */
final class CardPlugsCarryCard implements Check {

    @Override
    public void run(Items items, Problems problems) {
        items.findOnly(Standards.class).flatMap(Standards::electric).ifPresent(standard -> {
            for (Items.Placed<GraphicsCard> card : items.of(GraphicsCard.class)) {
                carries(card, standard.card(), problems);
                coded(card, standard.card(), problems);
            }
        });
    }

    private static void carries(Items.Placed<GraphicsCard> card, CardFeeds feeds, Problems problems) {
        GraphicsCard.Power power = card.value().power();
        int sixPin =
                card.value().electric().map(GraphicsCard.Electric::sixPinPlugs).orElse(0);
        double codedW = card.value()
                .electric()
                .flatMap(GraphicsCard.Electric::sixteenPinW)
                .map(Integer::doubleValue)
                .orElse(feeds.sixteenPinW());
        double mostW = feeds.slotW()
                + sixPin * feeds.sixPinW()
                + power.eightPinPlugs() * feeds.eightPinW()
                + power.sixteenPinPlugs() * codedW;
        if (!(power.worstW() <= mostW)) {
            problems.add(card.item()
                    .problem(
                            "power.worst_W",
                            Curve.plain(power.worstW()),
                            "at most " + Curve.plain(mostW) + " W through its slot and plugs",
                            "Is a plug missing?"));
        }
    }

    private static void coded(Items.Placed<GraphicsCard> card, CardFeeds feeds, Problems problems) {
        card.value()
                .electric()
                .flatMap(GraphicsCard.Electric::sixteenPinW)
                .filter(w -> !SixteenPinCodings.are(feeds, w))
                .ifPresent(w -> problems.add(card.item()
                        .problem(
                                "electric.sixteen_pin_W",
                                Integer.toString(w),
                                "a coding of the 16-pin plug: " + SixteenPinCodings.words(feeds),
                                "")));
    }
}
