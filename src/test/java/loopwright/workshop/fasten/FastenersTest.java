package loopwright.workshop.fasten;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import loopwright.answer.Inspection;
import loopwright.answer.RankAnswer;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.part.Screw;
import loopwright.fit.Arrangement;
import loopwright.fit.FitCase;
import loopwright.fit.FitWish;
import loopwright.fit.Layout.Stack;
import loopwright.rank.Order;
import loopwright.workshop.fasten.Joint.Holding;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds of the screws of every unbeaten build of two briefs. */
class FastenersTest {

    static List<Inspection> builds() {
        return Stream.of("slim-desk", "tight-budget")
                .flatMap(name -> builds(name).stream())
                .toList();
    }

    private static List<Inspection> builds(String name) {
        var catalog = SampleStacks.CATALOG;
        var brief = CatalogReader.readBrief(Path.of("scenarios/" + name + ".yaml"), catalog);
        FitCase fitCase = new FitCase(catalog, catalog.chassis(brief.chassis().get(0)), brief);
        return new RankAnswer(
                        fitCase, FitWish.ALL, new RankAnswer.RankWish(Order.COST, 1, Optional.empty()), Optional::empty)
                .result().unbeaten().stream()
                        .limit(8)
                        .map(r -> new Inspection(fitCase, r))
                        .toList();
    }

    @ParameterizedTest
    @MethodSource("builds")
    void everyScrewIsCountedAndHolds(Inspection in) {
        Fasteners screws = Fasteners.of(in);
        int bagged = screws.bag().values().stream().mapToInt(n -> n).sum();
        int refused = screws.refused().stream()
                .mapToInt(s -> s.joint().count().holes())
                .sum();
        int lacking = screws.fixed().stream()
                .filter(f -> f.screw().isEmpty())
                .mapToInt(FixedSet::count)
                .sum();
        assertThat(bagged + refused + lacking).isEqualTo(screws.screws());
        for (ScrewSet set : screws.sets()) {
            assertThat(set.joint().count().least())
                    .isBetween(1, set.joint().count().holes());
            set.findScrew().map(Stock::lengthHmm).ifPresent(length -> {
                assertThat(set.window().holds(length)).isTrue();
                assertThat(set.leftHmm().orElseThrow()).isGreaterThanOrEqualTo(100);
                assertThat(set.leftWorstHmm().orElseThrow())
                        .isLessThanOrEqualTo(set.leftHmm().orElseThrow());
            });
        }
        for (String id : screws.bag().keySet()) {
            assertThat(in.fitCase().catalog().part(Screw.class, id).id()).isEqualTo(id);
        }
    }

    @ParameterizedTest
    @MethodSource("builds")
    void everyFanAndRadiatorIsHeld(Inspection in) {
        Fasteners screws = Fasteners.of(in);
        for (Stack stack : in.build().stacks()) {
            String mount = stack.frame().mount().id();
            Arrangement arrangement = stack.shape().arrangement();
            int fans = stack.shape().pattern().fans();
            assertThat(count(screws, mount, Holding.RADIATOR)).isEqualTo(arrangement.hasRadiator() ? 4 * fans : 0);
            assertThat(count(screws, mount, Holding.BARE_FANS)).isEqualTo(arrangement.hasRadiator() ? 0 : 4 * fans);
            // Fans that no bolt of the radiator runs through have screws of their own.
            long through = screws.sets().stream()
                    .filter(s -> s.joint().mount().equals(mount) && s.joint().holding() == Holding.RADIATOR)
                    .flatMap(s -> s.joint().layers().stream())
                    .filter(l -> l.name().equals("fan"))
                    .count();
            int rows = arrangement.hasRadiator() ? arrangement.fanLayers() : 0;
            assertThat(count(screws, mount, Holding.FAR_FANS)).isEqualTo(4 * fans * (int) (rows - through));
        }
        assertThat(screws.fixed()).extracting(FixedSet::count).allMatch(n -> n > 0);
    }

    private static int count(Fasteners screws, String mount, Holding holding) {
        return screws.sets().stream()
                .filter(s -> s.joint().mount().equals(mount) && s.joint().holding() == holding)
                .mapToInt(s -> s.joint().count().holes())
                .sum();
    }
}
