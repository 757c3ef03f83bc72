package loopwright.answer;

import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import loopwright.fit.FitCase;
import loopwright.fit.FitWish;
import loopwright.rank.Order;
import loopwright.rank.RankResult.Ranked;

/** Finds builds again by the keys that a ranking printed, or the coolest build of a layout. */
public final class BuildFinder {

    private final FitCase fitCase;
    private final Halt halt;
    private final Supplier<RankAnswer> unbeaten;
    private final Supplier<RankAnswer> listed;

    /**
     * A finder.
     *
     * @param order the order of the list that keys may be from
     */
    public BuildFinder(FitCase fitCase, Order order, Halt halt) {
        this.fitCase = fitCase;
        this.halt = halt;
        this.unbeaten = Once.of(() -> rank(Order.COST, 1, Optional.empty()));
        this.listed = Once.of(() -> rank(order, Integer.MAX_VALUE, Optional.empty()));
    }

    /** The build with a key, among the unbeaten ones and those that the list has; empty when none has it. */
    public Optional<Ranked> find(String key) {
        Optional<Ranked> found = withKey(unbeaten.get(), key);
        return found.isPresent() ? found : withKey(listed.get(), key);
    }

    /** The coolest build of a layout that keeps the brief's limits; empty when none does. */
    public Optional<Ranked> ofLayout(String layoutKey) {
        return rank(Order.TEMPERATURE, 1, Optional.of(layoutKey)).result().unbeaten().stream()
                .findFirst();
    }

    /** The ranking with all builds that no other beats. */
    public RankAnswer unbeaten() {
        return unbeaten.get();
    }

    private RankAnswer rank(Order order, int top, Optional<String> layout) {
        return new RankAnswer(fitCase, FitWish.ALL, new RankAnswer.RankWish(order, top, layout), halt);
    }

    private static Optional<Ranked> withKey(RankAnswer answer, String key) {
        return Stream.concat(answer.result().unbeaten().stream(), answer.result().listed().stream())
                .filter(r -> r.build().key().equals(key))
                .findFirst();
    }
}
