package loopwright.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import loopwright.oracle.cases.CaseGenerator;
import org.junit.jupiter.api.Test;

/** The generated cases are hard enough to mean something. */
class CaseCensusTest {

    @Test
    void casesHangOnJointPositionsAndAreNotMonotone() {
        CaseCensus census = new CaseCensus();
        Seeds.tiny().forEach(seed -> census.count(CaseGenerator.generate(seed, CaseGenerator.Mode.TINY)));
        assertThat(census.hangsOnJoint * 100)
                .as("share that hangs on joint positions: %s", census)
                .isGreaterThanOrEqualTo(20 * census.cases);
        assertThat(census.notMonotone * 100)
                .as("share not monotone in mods: %s", census)
                .isGreaterThanOrEqualTo(10 * census.cases);
        assertThat(census.unknown).as("%s", census).isPositive();
        assertThat(census.nothingFits).as("%s", census).isPositive();
    }
}
