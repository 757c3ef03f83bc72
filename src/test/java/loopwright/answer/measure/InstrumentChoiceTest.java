package loopwright.answer.measure;

import static loopwright.testing.Mm.hmm;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.standard.Practice.Instrument;
import loopwright.catalog.standard.Practice.Takes;
import org.junit.jupiter.api.Test;

class InstrumentChoiceTest {

    private static final Instrument TAPE =
            new Instrument("tape", "tape", Optional.empty(), 1, 3000, List.of(Takes.OUTSIDE, Takes.INSIDE));
    private static final Instrument RULE =
            new Instrument("rule", "rule", Optional.empty(), 0.5, 300, List.of(Takes.OUTSIDE));
    private static final Instrument CALLIPER =
            new Instrument("calliper", "calliper", Optional.empty(), 0.05, 150, List.of(Takes.OUTSIDE));
    private static final List<Instrument> ALL = List.of(TAPE, RULE, CALLIPER);

    @Test
    void theRoughestThatAvoidsNineTenths() {
        InstrumentChoice choice = InstrumentChoice.of(ALL, List.of(0.01, 0.45, 0.5), hmm(2));
        assertThat(choice.instrument()).contains(RULE);
        assertThat(choice.notGoodEnough()).containsExactly(TAPE);
        assertThat(choice.avoided()).isEqualTo(0.45);
    }

    @Test
    void justBelowNineTenthsIsNotGoodEnough() {
        InstrumentChoice choice = InstrumentChoice.of(ALL, List.of(0.01, 0.4499, 0.5), hmm(2));
        assertThat(choice.instrument()).contains(CALLIPER);
        assertThat(choice.notGoodEnough()).containsExactly(TAPE, RULE);
    }

    @Test
    void whereNothingIsAvoidedTheRoughestThatIsSurerThanWhatIsBelieved() {
        assertThat(InstrumentChoice.of(ALL, List.of(0.0, 0.0, 0.0), hmm(0.6)).instrument())
                .contains(RULE);
        assertThat(InstrumentChoice.of(ALL, List.of(0.0, 0.0, 0.0), hmm(0.01)).instrument())
                .contains(CALLIPER);
        assertThat(InstrumentChoice.of(List.of(), List.of(), hmm(1)).instrument())
                .isEmpty();
    }

    @Test
    void itHasToReachAndToBeForIt() {
        assertThat(InstrumentChoice.suitable(ALL, Takes.OUTSIDE, hmm(150))).containsExactly(TAPE, RULE, CALLIPER);
        assertThat(InstrumentChoice.suitable(ALL, Takes.OUTSIDE, hmm(150.01))).containsExactly(TAPE, RULE);
        assertThat(InstrumentChoice.suitable(ALL, Takes.INSIDE, hmm(10))).containsExactly(TAPE);
        assertThat(InstrumentChoice.suitable(ALL, Takes.DEPTH, hmm(10))).isEmpty();
    }
}
