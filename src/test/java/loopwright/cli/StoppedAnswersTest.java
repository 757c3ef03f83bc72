package loopwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A search that was stopped says nothing it has not proven. */
class StoppedAnswersTest {

    private static final String BRIEF = "scenarios/small-box.yaml";

    @Test
    void fitGivesNoReasonsForWhatItHasNotLookedAt() {
        Ran ran = Ran.of("fit", BRIEF, "--time", "0.001");
        assertThat(ran.code()).isEqualTo(4);
        assertThat(String.join(" ", ran.outLines()).replaceAll(" +", " "))
                .contains("INCOMPLETE (time limit of 0.001 s): nothing found yet")
                .doesNotContain("nothing fits", "contradict", "always meets", "no hole pattern");
    }

    @Test
    void unlockCallsNothingImpossible() {
        Ran ran = Ran.of("unlock", BRIEF, "--time", "0.001");
        assertThat(ran.code()).isEqualTo(4);
        assertThat(ran.out())
                .contains("as delivered nothing found yet")
                .doesNotContain("nothing fits", "NO,", "NO:", "even with mods");
    }

    @Test
    void theTableOfCutsSaysThatItIsNotProven() {
        Ran ran = Ran.of("unlock", BRIEF, "--cuts", "2", "--time", "0.001");
        assertThat(ran.code()).isEqualTo(4);
        assertThat(ran.outLines())
                .contains("INCOMPLETE (time limit of 0.001 s): only what was found so far; nothing below is proven.");
    }
}
