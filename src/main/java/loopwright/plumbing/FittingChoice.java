package loopwright.plumbing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.Catalog;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.brief.LoopWish;
import loopwright.catalog.part.Tube;
import loopwright.catalog.part.TubeFitting;
import loopwright.catalog.part.TubeFitting.Kind;

/**
 * The cheapest fitting of each kind that takes the tube and that the brief allows; of equal price the first by id. Zinc and
 * aluminium only where the brief names that very fitting.
 */
record FittingChoice(
        Optional<TubeFitting> straight,
        Optional<TubeFitting> elbow,
        Optional<TubeFitting> plug,
        Optional<TubeFitting> drain) {

    static FittingChoice of(Catalog catalog, LoopWish wish, Tube tube) {
        List<String> named = wish.fittings().map(Choice::anyOf).orElse(List.of());
        return new FittingChoice(
                cheapest(catalog, named, tube, Kind.STRAIGHT),
                cheapest(catalog, named, tube, Kind.ELBOW_90),
                cheapest(catalog, named, tube, Kind.PLUG),
                cheapest(catalog, named, tube, Kind.DRAIN));
    }

    private static Optional<TubeFitting> cheapest(Catalog catalog, List<String> named, Tube tube, Kind kind) {
        return catalog.all(TubeFitting.class).stream()
                .filter(f -> f.kind() == kind)
                .filter(f -> kind != Kind.STRAIGHT || f.takes(tube))
                .filter(f -> named.isEmpty() ? f.isSoundInCopper() : named.contains(f.id()))
                .min(Comparator.comparingLong((TubeFitting f) -> f.buy().priceCents())
                        .thenComparing(TubeFitting::id));
    }
}
