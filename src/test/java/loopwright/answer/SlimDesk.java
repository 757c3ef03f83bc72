package loopwright.answer;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.brief.Brief;
import loopwright.fit.FitCase;
import loopwright.fit.FitWish;
import loopwright.rank.Build;
import loopwright.rank.Neighbours;
import loopwright.rank.Order;
import loopwright.rank.RankResult.Ranked;

/** Builds of the smallest of the scenarios. */
final class SlimDesk {

    private static final FitCase CASE = fitCase();

    private static final List<Ranked> UNBEATEN = new RankAnswer(
                    CASE, FitWish.ALL, new RankAnswer.RankWish(Order.COST, 1, Optional.empty()), Optional::empty)
            .result()
            .unbeaten();

    private SlimDesk() {}

    private static FitCase fitCase() {
        Catalog catalog = CatalogReader.read(Path.of("catalogs"));
        Brief brief = CatalogReader.readBrief(Path.of("scenarios/slim-desk.yaml"), catalog);
        return new FitCase(catalog, catalog.chassis(brief.chassis().get(0)), brief);
    }

    /** The coolest build that nothing beats. */
    static Inspection coolest() {
        return new Inspection(CASE, UNBEATEN.get(0));
    }

    /** The cheapest build. */
    static Inspection cheapest() {
        return new Inspection(CASE, UNBEATEN.get(UNBEATEN.size() - 1));
    }

    /** The neighbours of a build of one kind, in full. */
    static List<Inspection> beside(Inspection inspection, Neighbours.Kind kind) {
        Neighbours neighbours = new Neighbours(CASE, inspection.model());
        return neighbours.of(inspection.build()).stream()
                .filter(n -> n.kind() == kind)
                .map(n -> inspection(neighbours, n.build()))
                .toList();
    }

    private static Inspection inspection(Neighbours neighbours, Build build) {
        return new Inspection(CASE, new Ranked(build, 1, neighbours.witness(build)));
    }
}
