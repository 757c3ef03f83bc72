package loopwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** How {@code inspect} finds a build by its key or its layout's, and its three formats. */
class InspectCommandTest {

    private static final String BRIEF = "scenarios/slim-desk.yaml";
    private static final String NO_KEY = "22222-22222";

    /** What rank prints of its first unbeaten build, the key first, then the layout's. */
    private static final List<String> RANKED = firstRow(Ran.of("rank", BRIEF, "--format", "csv", "--top", "1"));

    private static List<String> firstRow(Ran ran) {
        String[] cells = ran.outLines().get(1).split(",", 5);
        return List.of(cells[2], cells[3]);
    }

    private static Ran ofBuild(String... more) {
        return inspect("--build", RANKED.get(0), more);
    }

    private static Ran inspect(String option, String key, String... more) {
        String[] args = new String[4 + more.length];
        System.arraycopy(new String[] {"inspect", BRIEF, option, key}, 0, args, 0, 4);
        System.arraycopy(more, 0, args, 4, more.length);
        Ran ran = Ran.of(args);
        assertThat(ran.out() + ran.err()).doesNotContain("Exception", "\tat ");
        return ran;
    }

    @Test
    void showsTheBuildThatRankPrinted() {
        Ran ran = ofBuild();
        assertThat(ran.code()).isZero();
        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains("build " + RANKED.get(0), "layout " + RANKED.get(1))
                .contains("THE BRIEF, LINE BY LINE", "CLEARANCES", "ROOM LEFT", "TEMPERATURES", "SOUND", "NEXT STEPS");
        assertThat(ran.outLines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void showsABuildOfALayoutThatFits() {
        Ran ran = inspect("--layout", RANKED.get(1), "--format", "json");
        assertThat(ran.code()).isZero();
        JsonNode answer = parsed(ran).get("answers").get(0);
        assertThat(answer.get("layout").asString()).isEqualTo(RANKED.get(1));
        assertThat(coolantC(answer))
                .isLessThanOrEqualTo(coolantC(
                        parsed(ofBuild("--format", "json")).get("answers").get(0)));
    }

    private static double coolantC(JsonNode answer) {
        return answer.get("temperatures").get(0).get("temperature_C").asDouble();
    }

    private static JsonNode parsed(Ran ran) {
        return JsonMapper.builder().build().readTree(ran.out());
    }

    @Test
    void jsonNamesItsFormAndTheBuild() {
        JsonNode all = parsed(ofBuild("--format", "json"));
        assertThat(all.get("schema").asString()).isEqualTo("loopwright/inspect/1");
        JsonNode answer = all.get("answers").get(0);
        assertThat(answer.get("key").asString()).isEqualTo(RANKED.get(0));
        assertThat(answer.propertyNames())
                .contains(
                        "checklist",
                        "clearances",
                        "room_left",
                        "temperatures",
                        "radiators",
                        "loop",
                        "sound",
                        "next_steps");
    }

    /** Every build that rank lists keeps every limit, so the list of the brief's lines may break none. */
    @Test
    void aRankedBuildBreaksNoLineOfItsBrief() {
        JsonNode lines =
                parsed(ofBuild("--format", "json")).get("answers").get(0).get("checklist");
        assertThat(lines).isNotEmpty();
        for (JsonNode line : lines) {
            assertThat(line.get("kept").asString()).as(line.toString()).isEqualTo("kept");
        }
    }

    @Test
    void csvHasARowAChange() {
        Ran ran = ofBuild("--format", "csv");
        assertThat(ran.code()).isZero();
        assertThat(ran.outLines())
                .first()
                .isEqualTo("build,kind,change,key,coolant_gain_K,band_low_K,band_high_K,cost,currency,labour_min,"
                        + "noise_dB,brief,catalog,program");
        assertThat(ran.outLines().stream().skip(1)).isNotEmpty().allMatch(l -> l.startsWith(RANKED.get(0) + ","));
        assertThat(ran.outLines()).anyMatch(l -> l.startsWith(RANKED.get(0) + ",cable,\"main-24 to board: wants "));
        assertThat(ran.outLines()).last().asString().startsWith(RANKED.get(0) + ",room-left,");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--build", "--layout"})
    void aKeyThatIsNotThereIsANo(String option) {
        Ran ran = inspect(option, NO_KEY);
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.outLines())
                .first()
                .asString()
                .startsWith("INSPECT  No build ")
                .contains(NO_KEY);
        assertThat(ran.outLines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void jsonOfANoTellsWhy() {
        Ran ran = inspect("--layout", NO_KEY, "--format", "json");
        assertThat(ran.code()).isEqualTo(1);
        JsonNode answer = parsed(ran).get("answers").get(0);
        assertThat(answer.get("complete").asBoolean()).isTrue();
        assertThat(answer.get("found").asBoolean()).isFalse();
        assertThat(answer.get("why").asString()).contains(NO_KEY);
        assertThat(answer.propertyNames()).containsExactly("complete", "found", "why");
    }

    @Test
    void neverCallsAStoppedSearchANo() {
        Ran ran = inspect("--layout", NO_KEY, "--time", "0.001", "--format", "json");
        assertThat(ran.code()).isEqualTo(4);
        assertThat(parsed(ran).get("answers").get(0).get("complete").asBoolean())
                .isFalse();
        assertThat(inspect("--layout", NO_KEY, "--time", "0.001").outLines())
                .contains("INSPECT  Stopped before the build was found.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--build", "--layout"})
    void whatCannotBeAKeyIsRefused(String option) {
        Ran ran = inspect(option, "no-key");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("\"no-key\"");
    }

    @Test
    void wantsOneOfBuildAndLayout() {
        Ran neither = Ran.of("inspect", BRIEF);
        assertThat(neither.code()).isEqualTo(2);
        assertThat(neither.err()).contains("--build", "--layout").doesNotContain("Exception");
        Ran both = inspect("--build", RANKED.get(0), "--layout", RANKED.get(1));
        assertThat(both.code()).isEqualTo(2);
        assertThat(both.out()).isEmpty();
    }
}
