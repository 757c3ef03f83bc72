package loopwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class FitCommandTest {

    private static final String BRIEF = "scenarios/slim-desk.yaml";

    /** One run of each format, shared. */
    private static final Ran TABLE = Ran.of("fit", BRIEF);

    private static final Ran JSON = Ran.of("fit", BRIEF, "--format", "json");

    @Test
    void answersInLinesThatFitATerminal() {
        assertThat(TABLE.code()).isZero();
        assertThat(TABLE.err()).isEmpty();
        assertThat(TABLE.outLines()).allMatch(line -> line.length() <= 100);
        assertThat(TABLE.outLines()).first().asString().contains("Complete: ", "layouts fit");
        assertThat(TABLE.outLines())
                .last()
                .asString()
                .matches("brief slim-desk, catalogue [0-9a-f]{12}, loopwright .*");
    }

    @Test
    void answersTheSameTwiceAndInAnyLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(Ran.of("fit", BRIEF)).isEqualTo(TABLE);
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertThat(Ran.of("fit", BRIEF, "--format", "json")).isEqualTo(JSON);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void jsonHasTheFixedNames() {
        JsonNode root = JsonMapper.shared().readTree(JSON.out());
        assertThat(root.propertyNames()).contains("schema", "program", "catalog", "brief", "answers");
        assertThat(root.path("schema").asString()).isEqualTo("loopwright/fit/1");
        JsonNode answer = root.path("answers").path(0);
        assertThat(answer.propertyNames())
                .contains("schema", "program", "catalog", "brief", "chassis", "complete", "layouts", "unknown");
        assertThat(answer.path("complete").asBoolean()).isTrue();
        for (JsonNode layout : answer.path("layouts")) {
            assertThat(layout.propertyNames()).contains("key", "stacks", "mod_sets", "tightest", "conductance_W_per_K");
            assertThat(layout.propertyNames())
                    .contains("fit_probability", "chance", "below_confidence", "likeliest_clash");
            for (String gap : List.of("tightest", "likeliest_clash")) {
                assertThat(layout.path(gap).propertyNames())
                        .containsExactly(
                                "margin_mm",
                                "clearance_mm",
                                "need_mm",
                                "between",
                                "verdict",
                                "worst_case_mm",
                                "rss_mm",
                                "probability",
                                "chance");
            }
            assertThat(layout.path("fit_probability").asDouble()).isBetween(0.0, 1.0);
            assertThat(layout.path("tightest").path("margin_mm").asDouble()).isNotNegative();
            for (JsonNode stack : layout.path("stacks")) {
                assertThat(stack.propertyNames())
                        .contains(
                                "mount",
                                "face",
                                "pattern",
                                "radiator_thickness_mm",
                                "fan_thickness_mm",
                                "arrangement",
                                "layers",
                                "port_end");
            }
            for (JsonNode set : layout.path("mod_sets")) {
                assertThat(set.propertyNames()).contains("mods", "witness");
                assertThat(set.path("witness").propertyNames()).contains("places", "stacks");
            }
        }
    }

    @Test
    void csvHasARowForEachLayoutAndModSet() {
        Ran csv = Ran.of("fit", BRIEF, "--format", "csv");
        int sets = 0;
        for (JsonNode layout :
                JsonMapper.shared().readTree(JSON.out()).path("answers").path(0).path("layouts")) {
            sets += layout.path("mod_sets").size();
        }
        assertThat(csv.code()).isZero();
        assertThat(csv.outLines()).hasSize(sets + 1);
    }

    @Test
    void aViewNeverLooksWhole() {
        Ran ran = Ran.of("fit", BRIEF, "--top", "1");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("more groups are not shown");
    }

    /** What one layout leaves takes a moment to find: too long for thousands. */
    @Test
    void onlyOneLayoutByItselfHasTheRoomItLeavesInJson() {
        JsonNode first = JsonMapper.shared()
                .readTree(JSON.out())
                .path("answers")
                .path(0)
                .path("layouts")
                .path(0);
        assertThat(first.path("mod_sets").path(0).propertyNames()).doesNotContain("room_left");
        Ran ran = Ran.of("fit", BRIEF, "--layout", first.path("key").asString(), "--format", "json");
        JsonNode rows = JsonMapper.shared()
                .readTree(ran.out())
                .path("answers")
                .path(0)
                .path("layouts")
                .path(0)
                .path("mod_sets")
                .path(0)
                .path("room_left");
        assertThat(rows).hasSizeGreaterThan(3);
        assertThat(rows.path(0).path("what").asString()).isEqualTo("card-length");
        assertThat(rows.path(0).propertyNames()).containsExactly("what", "now_mm", "most_mm", "stopped_by");
        for (JsonNode row : rows) {
            boolean radiator = row.path("what").asString().equals("radiator-thickness");
            assertThat(row.has("mount") && row.has("pattern"))
                    .as(row.toString())
                    .isEqualTo(radiator);
        }
    }

    @Test
    void showsOneLayoutInFull() {
        String key = JsonMapper.shared()
                .readTree(JSON.out())
                .path("answers")
                .path(0)
                .path("layouts")
                .path(0)
                .path("key")
                .asString();
        Ran ran = Ran.of("fit", BRIEF, "--layout", key);
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains("layout " + key, "margin, mm", "smallest part that will do", "room left for", "card length");
        assertThat(ran.outLines()).allMatch(line -> line.length() <= 100);
        Ran none = Ran.of("fit", BRIEF, "--layout", "22222-22222");
        assertThat(none.code()).isEqualTo(1);
        assertThat(none.out()).contains("no layout 22222-22222 fits");
        assertThat(Ran.of("fit", BRIEF, "--layout", "nonsense").code()).isEqualTo(2);
    }

    @Test
    void listsEveryLayout() {
        Ran ran = Ran.of("fit", BRIEF, "--all", "--mount", "roof");
        assertThat(ran.code()).isZero();
        assertThat(ran.outLines()).allMatch(line -> line.length() <= 100);
        assertThat(ran.outLines().stream().filter(l -> l.matches("[2-9a-z]{5}-[2-9a-z]{5}  .*")))
                .isNotEmpty()
                .allMatch(l -> true);
    }

    @Test
    void nothingFitsIsANo() {
        Ran ran = Ran.of("fit", "scenarios/nothing-fits.yaml");
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out()).contains("Complete: nothing fits");
        assertThat(ran.outLines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void aLimitIsMarked() {
        Ran ran = Ran.of("fit", BRIEF, "--limit", "3");
        assertThat(ran.code()).isEqualTo(4);
        assertThat(ran.out()).contains("INCOMPLETE (limit of 3 layouts)");
        Ran late = Ran.of("fit", BRIEF, "--time", "0.000001", "--format", "json");
        assertThat(late.code()).isEqualTo(4);
        JsonNode answer =
                JsonMapper.shared().readTree(late.out()).path("answers").path(0);
        assertThat(answer.path("complete").asBoolean()).isFalse();
        assertThat(answer.path("incomplete_because").asString()).startsWith("time limit of ");
    }

    @Test
    void unknownIdsNameTheNearest() {
        assertThat(error("--chassis", "slimm")).isEqualTo("loopwright: no chassis \"slimm\". Maybe slim?");
        assertThat(error("--mount", "rof")).isEqualTo("loopwright: no mount \"rof\". Maybe roof?");
        assertThat(error("--with", "longer-fet"))
                .isEqualTo("loopwright: no mod of slim \"longer-fet\". Maybe longer-feet?");
        assertThat(error("--without", "zzzzzzzzzzzzzzzz"))
                .startsWith("loopwright: no mod \"zzzzzzzzzzzzzzzz\". Known: ");
        assertThat(error("--top", "0")).isEqualTo("loopwright: --top must be at least 1 but was 0");
        assertThat(error("--time", "-1"))
                .isEqualTo("loopwright: --time must be above 0 and at most 1000000 seconds but was -1.0");
    }

    private static String error(String option, String value) {
        Ran ran = Ran.of("fit", BRIEF, option, value);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        return ran.errLines().get(0);
    }

    @Test
    void severalChassisComeInOrder() {
        Ran ran = Ran.of("fit", "scenarios/tight-budget.yaml", "--top", "2");
        List<String> heads =
                ran.outLines().stream().filter(l -> l.startsWith("FIT  ")).toList();
        assertThat(heads).hasSize(2);
        assertThat(heads.get(0)).contains("(micro-tower)");
        assertThat(ran.outLines()).allMatch(line -> line.length() <= 100);
    }
}
