package loopwright.answer;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import loopwright.fit.FitCase;
import loopwright.rank.Order;
import loopwright.rank.RankResult.Ranked;

/** Finds a build again by the key that a ranking printed, or the coolest build of a layout. */
public final class BuildFinder {

    private BuildFinder() {}

    /** The build with a key, among the unbeaten ones and those that a list by an order has; empty when none has it. */
    public static Optional<Ranked> byKey(FitCase fitCase, String key, Order order, Halt halt) {
        Optional<Ranked> unbeaten = withKey(rank(fitCase, Order.COST, 1, Optional.empty(), halt), key);
        return unbeaten.isPresent()
                ? unbeaten
                : withKey(rank(fitCase, order, Integer.MAX_VALUE, Optional.empty(), halt), key);
    }

    /** The coolest build of a layout that keeps the brief's limits; empty when none does. */
    public static Optional<Ranked> ofLayout(FitCase fitCase, String layoutKey, Halt halt) {
        List<Ranked> unbeaten = rank(fitCase, Order.TEMPERATURE, 1, Optional.of(layoutKey), halt)
                .result()
                .unbeaten();
        return unbeaten.stream().findFirst();
    }

    private static RankAnswer rank(FitCase fitCase, Order order, int top, Optional<String> layout, Halt halt) {
        return new RankAnswer(fitCase, loopwright.fit.FitWish.ALL, new RankAnswer.RankWish(order, top, layout), halt);
    }

    private static Optional<Ranked> withKey(RankAnswer answer, String key) {
        return Stream.concat(answer.result().unbeaten().stream(), answer.result().listed().stream())
                .filter(r -> r.build().key().equals(key))
                .findFirst();
    }
}
