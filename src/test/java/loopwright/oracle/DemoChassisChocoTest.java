package loopwright.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import loopwright.oracle.choco.ChocoAlone;
import org.junit.jupiter.api.Test;

/** The demo's short tower with a reduced brief: Choco alone, as one model, finds the same layouts and needed sets. */
class DemoChassisChocoTest {

    /** Mods that change nothing about room, or that the demo's brief forbids, and one that only doubles the sets. */
    private static final List<String> LEFT_OUT = List.of(
            "side-window",
            "roof-cover-radiator",
            "floor-filter-coarse",
            "rear-grille-cut",
            "drive-behind-tray",
            "longer-feet");

    @Test
    void findsTheSameNeededSets() {
        OracleCase question = DemoQuestion.forbidding(DemoQuestion.reduced(), LEFT_OUT);
        FitAnswer truth = new ChocoAlone().apply(question);

        assertThat(truth.needed()).hasSizeGreaterThan(50);
        assertThat(ProductionAgreementTest.production(question)).isEqualTo(truth);
    }
}
