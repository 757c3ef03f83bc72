package loopwright.answer.why;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Supply;
import loopwright.fit.FitCase;
import loopwright.fit.rules.Chosen;
import loopwright.fit.rules.Role;
import loopwright.testing.SmallCase;
import loopwright.testing.SmallParts;
import org.junit.jupiter.api.Test;

/** What a supply lacks is told with numbers, and which of the catalogue would do; loads as in {@code ElectricRulesTest}. */
class SupplyCureTest {

    private static Supply supply(String id, double ratedW, Supply.Rails rails) {
        Supply was = SmallParts.supply(id, 140, 40, ratedW);
        return new Supply(
                id,
                id,
                was.variantOf(),
                was.buy(),
                was.form(),
                was.body(),
                was.plugRoomMm(),
                was.output(),
                Optional.of(rails),
                List.of(),
                List.of(),
                Optional.empty());
    }

    private static String sentence(String rule, SmallCase small) {
        FitCase fitCase = small.fitCase();
        Map<Role, Part> parts = new EnumMap<>(Role.class);
        for (Role role : Role.values()) {
            if (role != Role.RESERVOIR) {
                parts.put(role, fitCase.candidates(role).get(0));
            }
        }
        return new PartRuleWords(fitCase).sentence(rule, new Chosen(parts));
    }

    private static SmallCase with(double ratedW, double twelveVoltA, double lowW, Optional<Integer> surge) {
        return new SmallCase(300, 300)
                .without("supply")
                .with(supply("weak", ratedW, new Supply.Rails(twelveVoltA, lowW, surge, Optional.empty())));
    }

    @Test
    void tellsWhatIsShortAndWhatCuresIt() {
        SmallCase small = with(400, 20, 100, Optional.of(200))
                .with(supply("zz-strong", 600, new Supply.Rails(49, 50, Optional.of(100), Optional.empty())));
        assertThat(sentence("electric.twelve-volt", small))
                .endsWith(": 300.0 W wanted, weak has 240.0 W, 60.0 W short; cheapest supply of the catalogue for these"
                        + " parts: zz-strong, 10.00 EUR");
    }

    @Test
    void tellsWhereNothingDoes() {
        assertThat(sentence("electric.surge", with(400, 33, 100, Optional.of(100))))
                .endsWith(": card 300 W, processor 150 W, rest 60 W come to 510.0 W, weak stands 100 % of its rating,"
                        + " 400.0 W, 110.0 W short; no supply of the catalogue does for these parts");
        assertThat(sentence("electric.low-rails", with(400, 33, 4, Optional.of(100))))
                .contains(": 10.0 W wanted, weak has 4.0 W, 6.0 W short");
        assertThat(sentence("electric.surge-reserve", with(400, 33, 100, Optional.empty())))
                .contains(": 460.0 W wanted, weak has 400.0 W, 60.0 W short");
        assertThat(sentence("electric.board-processor-plugs", with(400, 33, 100, Optional.empty())))
                .endsWith(": processor wants 1, board has 1");
    }
}
