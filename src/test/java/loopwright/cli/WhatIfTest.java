package loopwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Readings and what-ifs as a shell sees them. */
class WhatIfTest {

    private static final String BRIEF = "scenarios/slim-desk.yaml";
    private static final String[] LONGER = {"--assume", "card.length=+60mm"};
    private static final String READINGS = """
            schema: loopwright/readings/1
            source: invented
            items:
              - {of: slim, dimension: shell.interior.width_mm, value_mm: %s, instrument: rods, date: 2026-03-09}
              - {of: slim, dimension: shell.interior.depth_mm, value_mm: 390, instrument: rods, date: 2026-03-09}
              - {of: slim, dimension: shell.interior.depth_mm, value_mm: 391, instrument: tape, plus_minus_mm: 0.5,
                  date: 2026-03-10}
            """;

    private static Ran fit(String... more) {
        String[] args = new String[2 + more.length];
        args[0] = "fit";
        args[1] = BRIEF;
        System.arraycopy(more, 0, args, 2, more.length);
        return Ran.of(args);
    }

    private static JsonNode answer(Ran ran) {
        return JsonMapper.builder().build().readTree(ran.out()).get("answers").get(0);
    }

    private static Set<String> keys(JsonNode list) {
        Set<String> out = new TreeSet<>();
        list.forEach(one -> out.add(one.get("key").asString()));
        return out;
    }

    @Test
    void theFlipsAreWhatTheAnswersDifferBy() {
        JsonNode before = answer(fit("--format", "json"));
        JsonNode after = answer(fit(LONGER[0], LONGER[1], "--format", "json"));
        assertThat(before.has("overrides")).isFalse();
        JsonNode overrides = after.get("overrides");
        Set<String> gone = new TreeSet<>(keys(before.get("layouts")));
        gone.removeAll(keys(after.get("layouts")));
        assertThat(gone).isNotEmpty();
        assertThat(keys(overrides.get("died"))).isEqualTo(gone);
        assertThat(overrides.get("alive")).isEmpty();
        overrides
                .get("died")
                .forEach(d ->
                        assertThat(d.get("clash").get("margin_mm").asDouble()).isNegative());
        assertThat(overrides.get("applied")).hasSize(17);
        assertThat(overrides.get("applied").get(0).get("by").asString()).isEqualTo("--assume card.length=+60mm");
        assertThat(overrides.get("complete").asBoolean()).isTrue();
        assertThat(overrides.get("same").asInt()
                        + overrides.get("verdicts").size()
                        + overrides.get("other_mods").size())
                .isEqualTo(after.get("layouts").size());
    }

    @Test
    void peopleReadItFirst() {
        Ran ran = fit(LONGER[0], LONGER[1], "--top", "1");
        assertThat(ran.outLines().get(0)).startsWith("WHAT IF  ");
        assertThat(ran.out()).contains("   set:      --assume card.length=+60mm: ", "   gone:     ", "\nFIT  ");
        assertThat(ran.outLines()).allMatch(line -> line.length() <= 100);
        assertThat(fit("--top", "1").out()).doesNotContain("WHAT IF");
    }

    @Test
    void spreadsheetsGetTheValuesAndNoMore() {
        List<String> csv = fit(LONGER[0], LONGER[1], "--format", "csv").outLines();
        List<String> plain = fit("--format", "csv").outLines();
        assertThat(csv.get(0)).isEqualTo(plain.get(0));
        assertThat(csv.size()).isLessThan(plain.size());
    }

    @Test
    void contradictionsAreSaidAndNotUsed(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("r.yaml"), READINGS.formatted("120"));
        Ran ran = fit("--readings", file.toString(), "--top", "1", "--format", "json");
        JsonNode overrides = answer(ran).get("overrides");
        assertThat(overrides.get("contradictions")).hasSize(1);
        assertThat(overrides.get("contradictions").get(0).get("sentence").asString())
                .contains(
                        "390.0 +-0.15 mm (rods, 2026-03-09)",
                        "391.0 +-0.5 mm (tape, 2026-03-10)",
                        "1.0 mm",
                        "measure again");
        assertThat(overrides.get("applied")).hasSize(1);
    }

    @Test
    void wrongReadingsAreToldLikeOtherFiles(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("r.yaml"), READINGS.formatted("wide"));
        Ran ran = fit("--readings", file.toString());
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.errLines().get(0))
                .endsWith("r.yaml:4:62: reading number 1: value_mm: found the text \"wide\", allowed a number");
        assertThat(fit("--readings", folder.resolve("none.yaml").toString()).code())
                .isEqualTo(3);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            card.lenght=+3mm | no length "lenght" of any card. Maybe length?
            card.length=+3   | "+3" is no length: write +3mm (longer), -0.5mm (shorter) or 305mm (exactly), with at most two decimals
            """)
    void aWrongAssumptionIsAWrongCommandLine(String text, String why) {
        Ran ran = fit("--assume", text);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.errLines().get(0)).isEqualTo("loopwright: --assume " + text + ": " + why);
    }

    @Test
    void aCatalogueThatIsWrongByItSaysWhatOverrodeIt() {
        Ran ran = fit("--assume", "slim.inside.board.pose.corner.z=+0mm", "--assume", "rad-1x120-30a.width=+0.01mm");
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.errLines().get(0))
                .contains(
                        "radiator \"rad-1x120-30a\": body.width_mm: ",
                        "As overridden by --assume" + " rad-1x120-30a.width=+0.01mm: rad-1x120-30a.body.width_mm ");
    }

    @Test
    void everyCommandTakesThem() {
        for (List<String> command : List.of(
                List.of("unlock", BRIEF),
                List.of("rank", BRIEF),
                List.of("inspect", BRIEF, "--layout", "22222-22222"))) {
            String[] args = new String[command.size() + 2];
            command.toArray(args);
            args[command.size()] = "--assume";
            args[command.size() + 1] = "memory.height=+1mm";
            Ran ran = Ran.of(args);
            assertThat(ran.outLines().get(0)).as(command.toString()).startsWith("WHAT IF  ");
        }
    }

    @Test
    void whereThereIsNoSuchBuildProgramsStillReadTheFlips() {
        Ran ran = Ran.of(
                "inspect", BRIEF, "--layout", "22222-22222", "--assume", "memory.height=+1mm", "--format", "json");
        assertThat(answer(ran).get("overrides").get(0).get("chassis").asString())
                .isEqualTo("slim");
    }
}
