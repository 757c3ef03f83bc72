package loopwright.workshop.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.standard.Practice;
import loopwright.catalog.standard.WorkStage;
import org.junit.jupiter.api.Test;

/** The three-point rule by hand, and what one clash costs. */
class LabourTest {

    /** 100 minutes, 75 at best, 200 at worst: (75 + 400 + 200)/6 = 112.5 likely, (200 - 75)/6 = 20.8 spread. */
    @Test
    void threePoints() {
        StageHours hours = StageHours.of(WorkStage.CUT, 100, 75, 200);
        assertThat(hours.likelySixthMin()).isEqualTo(675);
        assertThat(hours.likelyMin()).isEqualTo(112.5);
        assertThat(hours.spreadSixthMin()).isEqualTo(125);
    }

    /**
     * A clash found after assembly costs 11 to 12 h, at the dry fit 1 to 1.5 h; at 45 an hour about 500 to 540 against 45 to 70
     * (common practice).
     */
    @Test
    void aClashAfterAssemblyCostsTenTimesOneAtTheDryFit() {
        Practice practice = CatalogReader.read(Path.of("catalogs")).practice();
        assertThat(rework(practice, Practice.Stage.AFTER_ASSEMBLY)).containsExactly(49_500L, 54_000L);
        assertThat(rework(practice, Practice.Stage.DRY_MOCK_UP)).containsExactly(4_500L, 6_750L);
    }

    private static long[] rework(Practice practice, Practice.Stage stage) {
        Rework its = Rework.of(practice, 4_500).stream()
                .filter(r -> r.stage() == stage)
                .findFirst()
                .orElseThrow();
        return new long[] {its.lowCents(), its.highCents()};
    }
}
