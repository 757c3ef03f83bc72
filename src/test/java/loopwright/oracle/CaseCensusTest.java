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
        assertThat(census.hangsOnTight * 100)
                .as("share that hangs on refusing tight places: %s", census)
                .isGreaterThanOrEqualTo(15 * census.cases);
        assertThat(census.fitWithoutTight * 2)
                .as("something fits though tight places are refused: %s", census)
                .isGreaterThan(census.refuseTight);
        assertThat(census.hangsOnElectrics * 100)
                .as("share that hangs on electrics: %s", census)
                .isGreaterThanOrEqualTo(15 * census.cases);
        assertThat(census.hangsOnRule.values())
                .as("cases that hang on one rule: %s", census)
                .allMatch(cases -> cases >= 3);
        assertThat(census.hangsOnSpread).as("%s", census).isPositive();
        assertThat(census.unknown).as("%s", census).isPositive();
        assertThat(census.nothingFits).as("%s", census).isPositive();
    }
}
