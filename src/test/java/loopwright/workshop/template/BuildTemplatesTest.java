package loopwright.workshop.template;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loopwright.answer.Inspection;
import loopwright.answer.RankAnswer;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.brief.Brief;
import loopwright.fit.FitCase;
import loopwright.fit.FitWish;
import loopwright.fit.Witness;
import loopwright.rank.Order;
import loopwright.rank.RankResult.Ranked;
import org.junit.jupiter.api.Test;

/** Templates of real builds: the smallest scenario. */
class BuildTemplatesTest {

    @Test
    void takeThePositionsOfTheWitness() {
        Brief brief = CatalogReader.readBrief(Path.of("scenarios/slim-desk.yaml"), Demo.CATALOG);
        FitCase fitCase =
                new FitCase(Demo.CATALOG, Demo.CATALOG.chassis(brief.chassis().get(0)), brief);
        List<Ranked> unbeaten = new RankAnswer(
                        fitCase, FitWish.ALL, new RankAnswer.RankWish(Order.COST, 1, Optional.empty()), Optional::empty)
                .result()
                .unbeaten();
        assertThat(unbeaten).isNotEmpty();
        for (Ranked ranked : unbeaten) {
            Setting setting = Setting.of(new Inspection(fitCase, ranked));
            assertThat(setting.mods()).isEqualTo(ranked.build().mods().mods(fitCase.chassis()));
            assertThat(setting.identity().build()).isEqualTo(ranked.build().key());
            assertThat(setting.hung()).hasSameSizeAs(ranked.witness().stacks());
            for (Witness.At at : ranked.witness().stacks()) {
                Setting.Hung hung = setting.on(at.stack().frame().mount().id()).orElseThrow();
                assertThat(hung.pattern()).isEqualTo(at.stack().shape().pattern());
                assertThat(hung.alongHmm()).isEqualTo(at.alongHmm());
                assertThat(hung.asideHmm()).isEqualTo(at.asideHmm());
                assertThat(hung.thread().isPresent())
                        .as("a radiator says what its screws have, a bare row of fans does not")
                        .isEqualTo(ranked.build().parts().containsKey("radiator " + hung.mount()));
            }
            assertThat(Templates.of(setting).panels().isEmpty())
                    .isEqualTo(setting.mods().stream()
                            .noneMatch(m -> m.effect().airways().stream()
                                            .anyMatch(a -> a.cut().isPresent())
                                    || !m.effect().covers().isEmpty()));
        }
    }
}
