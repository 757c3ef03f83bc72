package loopwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** How {@code compare} finds two builds, and its three formats. */
class CompareCommandTest {

    private static final String BRIEF = "scenarios/slim-desk.yaml";
    private static final String NO_KEY = "22222-22222";

    /** Keys that rank prints: the unbeaten builds, then the cheapest. */
    private static final List<String> KEYS = Ran.of("rank", BRIEF, "--format", "csv", "--top", "3").outLines().stream()
            .skip(1)
            .map(l -> l.split(",", 4)[2])
            .distinct()
            .toList();

    private static Ran compare(String... keysAndMore) {
        String[] args = new String[2 + keysAndMore.length];
        args[0] = "compare";
        args[1] = BRIEF;
        System.arraycopy(keysAndMore, 0, args, 2, keysAndMore.length);
        Ran ran = Ran.of(args);
        assertThat(ran.out() + ran.err()).doesNotContain("Exception", "\tat ");
        return ran;
    }

    private static JsonNode answer(Ran ran) {
        return JsonMapper.builder().build().readTree(ran.out()).get("answers").get(0);
    }

    @Test
    void putsTwoBuildsSideBySide() {
        Ran ran = compare(KEYS.get(0), KEYS.get(1));
        assertThat(ran.code()).isZero();
        assertThat(ran.out().replaceAll("\\s+", " ")).contains("A is " + KEYS.get(0), "B is " + KEYS.get(1));
        assertThat(ran.outLines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void aBuildIsEqualToItself() {
        Ran ran = compare(KEYS.get(0), KEYS.get(0), "--format", "json");
        assertThat(ran.code()).isZero();
        int withBand = 0;
        for (JsonNode row : answer(ran).get("figures")) {
            assertThat(row.get("difference").asDouble()).as(row.toString()).isZero();
            if (!row.get("plus_minus").isNull()) {
                assertThat(row.get("plus_minus").asDouble()).as(row.toString()).isZero();
                withBand++;
            }
        }
        assertThat(withBand).isPositive();
        assertThat(answer(ran).get("only_first")).isEmpty();
        assertThat(answer(ran).get("only_second")).isEmpty();
    }

    @Test
    void jsonNamesItsFormAndBothBuilds() {
        Ran ran = compare(KEYS.get(0), KEYS.get(1), "--format", "json");
        assertThat(JsonMapper.builder()
                        .build()
                        .readTree(ran.out())
                        .get("schema")
                        .asString())
                .isEqualTo("loopwright/compare/1");
        assertThat(answer(ran).get("first").asString()).isEqualTo(KEYS.get(0));
        assertThat(answer(ran).get("second").asString()).isEqualTo(KEYS.get(1));
        int only = answer(ran).get("only_first").size()
                + answer(ran).get("only_second").size();
        assertThat(only).isPositive();
    }

    @Test
    void csvHasARowAFigure() {
        Ran ran = compare(KEYS.get(0), KEYS.get(1), "--format", "csv");
        assertThat(ran.code()).isZero();
        assertThat(ran.outLines()).first().isEqualTo("figure,first,second,difference,plus_minus,brief,catalog,program");
        assertThat(ran.outLines()).anyMatch(l -> l.startsWith("\"price, EUR\","));
    }

    @Test
    void aKeyThatIsNotThereIsANo() {
        Ran ran = compare(KEYS.get(0), NO_KEY);
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.outLines())
                .first()
                .asString()
                .startsWith("COMPARE  No build has the key " + NO_KEY + ":")
                .doesNotContain(KEYS.get(0));
        assertThat(ran.outLines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void neverCallsAStoppedSearchANo() {
        Ran ran = compare(KEYS.get(0), NO_KEY, "--time", "0.001", "--format", "json");
        assertThat(ran.code()).isEqualTo(4);
        assertThat(answer(ran).get("complete").asBoolean()).isFalse();
    }

    @Test
    void wantsTwoKeys() {
        Ran one = compare(KEYS.get(0));
        assertThat(one.code()).isEqualTo(2);
        assertThat(one.err()).contains("KEY");
        assertThat(compare().code()).isEqualTo(2);
        assertThat(compare(KEYS.get(0), KEYS.get(0), KEYS.get(0)).code()).isEqualTo(2);
        Ran wrong = compare(KEYS.get(0), "no-key");
        assertThat(wrong.code()).isEqualTo(2);
        assertThat(wrong.err()).contains("\"no-key\"");
    }
}
