package loopwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code measure} as a shell sees it. */
class MeasureCommandTest {

    private static final String BRIEF = "scenarios/slim-desk.yaml";
    private static final Ran JSON = Ran.of("measure", BRIEF, "--top", "2", "--format", "json");

    @Test
    void jsonHasTheFixedNames() {
        assertThat(JSON.code()).isZero();
        JsonNode answer =
                JsonMapper.shared().readTree(JSON.out()).path("answers").path(0);
        assertThat(answer.path("schema").asString()).isEqualTo("loopwright/measure/1");
        assertThat(answer.path("complete").asBoolean()).isTrue();
        assertThat(answer.path("unknown")).isEmpty();
        assertThat(answer.path("stages")).hasSize(6);
        assertThat(answer.path("dimensions")).hasSize(2);
        for (JsonNode each : answer.path("dimensions")) {
            assertThat(each.propertyNames())
                    .containsExactly(
                            "of",
                            "dimension",
                            "value_mm",
                            "plus_minus_mm",
                            "known",
                            "layouts_hang",
                            "die",
                            "come_alive",
                            "exact",
                            "regret_avoided_cents",
                            "instrument",
                            "instrument_plus_minus_mm",
                            "not_good_enough",
                            "where");
        }
    }

    @Test
    void answersTheSameAgain() {
        assertThat(Ran.of("measure", BRIEF, "--top", "2", "--format", "json")).isEqualTo(JSON);
    }

    @Test
    void csvHasOneRowADimension() {
        List<String> lines =
                Ran.of("measure", BRIEF, "--top", "2", "--format", "csv").outLines();
        assertThat(lines).hasSize(3);
        assertThat(lines.get(0))
                .isEqualTo(
                        "chassis,of,dimension,value_mm,plus_minus_mm,known,layouts_wait,only_one_for,layouts_hang,die,"
                                + "come_alive,exact,regret_avoided_cents,currency,instrument,instrument_plus_minus_mm,"
                                + "not_good_enough,where,list,brief,catalog,program");
        assertThat(lines.get(1)).startsWith("slim,");
    }

    /** With a reading that kills layouts, the answer first says so; then the layout's gaps and what a clash costs. */
    @Test
    void recordsLeadAndTheRestFollows(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("r.yaml"), """
                schema: loopwright/readings/1
                source: invented
                items:
                  - {of: slim, dimension: shell.interior.depth_mm, value_mm: 289.5, instrument: rods, date: 2026-03-09}
                """);
        Ran ran = Ran.of("measure", BRIEF, "--top", "1", "--record", file.toString());
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        assertThat(ran.outLines()).allMatch(line -> line.length() <= 100);
        assertThat(ran.outLines().get(0)).startsWith("WHAT IF  ");
        assertThat(ran.out())
                .contains("(rods, 2026-03-09)", "\nMEASURE  ", "   where:   ", "   regret:  about ", "after assembly");
        assertThat(ran.out()).contains("\n- {of: ", ", value_mm: , instrument: ");
    }

    @Test
    void saysNoWhereNothingFitsAndNothingWaits() {
        Ran ran = Ran.of("measure", "scenarios/nothing-fits.yaml");
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.outLines().get(0))
                .isEqualTo("MEASURE  Nothing fits and nothing waits: no reading is asked for.");
    }

    @Test
    void refusesAWrongCommandLine() {
        assertThat(Ran.of("measure", BRIEF, "--top", "0").code()).isEqualTo(2);
        assertThat(Ran.of("measure", BRIEF, "--layout", "nonsense").code()).isEqualTo(2);
        assertThat(Ran.of("measure", BRIEF, "--layout", "22222-22222").code()).isEqualTo(1);
        assertThat(Ran.of("measure", BRIEF, "--time", "0.001").code()).isEqualTo(4);
    }

    @Test
    void whatWasStoppedNeverLooksWhole() {
        Ran csv = Ran.of("measure", BRIEF, "--time", "0.001", "--format", "csv");
        List<String> lines = csv.outLines();
        assertThat(lines.get(lines.size() - 1)).contains("INCOMPLETE: time limit of 0.001 s");
        assertThat(lines.get(1).split(",", -1)).hasSameSizeAs(lines.get(0).split(",", -1));
        Ran text = Ran.of("measure", BRIEF, "--time", "0.001");
        assertThat(text.outLines().get(0)).isEqualTo("MEASURE  Stopped before anything could be said.");
        assertThat(text.out()).contains("INCOMPLETE (time limit of 0.001 s)");
    }
}
