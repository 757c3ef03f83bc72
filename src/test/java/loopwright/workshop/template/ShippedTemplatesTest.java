package loopwright.workshop.template;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.answer.Inspection;
import loopwright.answer.RankAnswer;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.brief.Brief;
import loopwright.fit.FitCase;
import loopwright.fit.FitWish;
import loopwright.rank.Order;
import loopwright.rank.RankResult.Ranked;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is ranked can be cut: no template of an unbeaten build of a shipped brief is refused. */
class ShippedTemplatesTest {

    @ParameterizedTest
    @ValueSource(
            strings = {"demo", "micro", "no-visible-cuts", "quiet-above-all", "slim-desk", "small-box", "tight-budget"})
    void refusesNoUnbeatenBuild(String scenario) {
        Brief brief = CatalogReader.readBrief(Path.of("scenarios", scenario + ".yaml"), Demo.CATALOG);
        List<String> refused = new ArrayList<>();
        int builds = 0;
        for (String chassis : brief.chassis()) {
            FitCase fitCase = new FitCase(Demo.CATALOG, Demo.CATALOG.chassis(chassis), brief);
            List<Ranked> unbeaten = new RankAnswer(
                            fitCase,
                            FitWish.ALL,
                            new RankAnswer.RankWish(Order.COST, 1, Optional.empty()),
                            Optional::empty)
                    .result()
                    .unbeaten();
            builds += unbeaten.size();
            for (Ranked ranked : unbeaten) {
                for (PanelTemplate one :
                        Templates.of(new Inspection(fitCase, ranked)).all()) {
                    one.findings().stream()
                            .filter(f -> f.severity() == Finding.Severity.REFUSED)
                            .forEach(f -> refused.add(ranked.build().key() + " " + one.id() + ": " + f));
                }
            }
        }
        assertThat(builds).as("builds of " + scenario).isPositive();
        assertThat(refused).isEmpty();
    }
}
