package loopwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class UnlockCommandTest {

    private static final String BRIEF = "scenarios/slim-desk.yaml";

    /** One run, shared. */
    private static final Ran JSON = Ran.of("unlock", BRIEF, "--cuts", "3", "--format", "json");

    private static JsonNode answer() {
        return JsonMapper.shared().readTree(JSON.out()).path("answers").path(0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "micro",
                "no-visible-cuts",
                "nothing-fits",
                "quiet-above-all",
                "slim-desk",
                "small-box",
                "tight-budget"
            })
    void answersInLinesThatFitATerminal(String brief) {
        Ran ran = Ran.of("unlock", "scenarios/" + brief + ".yaml");
        assertThat(ran.code()).isEqualTo(brief.equals("nothing-fits") ? 1 : 0);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.outLines()).allMatch(line -> line.length() <= 100);
        assertThat(ran.outLines()).first().asString().startsWith("UNLOCK  ");
        assertThat(ran.out()).contains("Complete: ", "Cutting sheet metal: ", "Local codes");
        assertThat(ran.outLines())
                .last()
                .asString()
                .matches("brief " + brief + ", catalogue [0-9a-f]{12}, loopwright .*");
    }

    @Test
    void answersTheSameInAnyLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(Ran.of("unlock", BRIEF, "--cuts", "3", "--format", "json"))
                    .isEqualTo(JSON);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void jsonHasTheFixedNames() {
        assertThat(JSON.code()).isZero();
        JsonNode answer = answer();
        assertThat(answer.propertyNames())
                .contains("schema", "program", "catalog", "brief", "chassis", "complete", "mounts", "combinations");
        assertThat(answer.path("schema").asString()).isEqualTo("loopwright/unlock/1");
        int sets = 0;
        for (JsonNode mount : answer.path("mounts")) {
            assertThat(mount.propertyNames()).contains("mount", "face", "as_delivered", "unlocked", "impossible");
            for (JsonNode unlocked : mount.path("unlocked")) {
                assertThat(unlocked.propertyNames())
                        .contains(
                                "stack",
                                "mod_sets",
                                "labour_min",
                                "cost_cents",
                                "coolant_gain_K",
                                "coolant_gain_band_K");
                for (JsonNode set : unlocked.path("mod_sets")) {
                    assertThat(set.propertyNames())
                            .contains(
                                    "mods",
                                    "labour_min",
                                    "paint_min",
                                    "days",
                                    "cost_cents",
                                    "visible_cuts",
                                    "hidden_cuts",
                                    "way_back",
                                    "height_added_mm",
                                    "coolant_gain_K",
                                    "coolant_gain_band_K",
                                    "conductance_gain_W_per_K",
                                    "arrangements");
                    sets++;
                }
            }
            for (JsonNode impossible : mount.path("impossible")) {
                assertThat(impossible.propertyNames()).contains("stack", "shortfall_mm", "blocked_by");
            }
        }
        assertThat(sets).isPositive();
    }

    @Test
    void jsonHasTheTableOfCutsWhenAsked() {
        for (String block : new String[] {"any", "hidden_only"}) {
            JsonNode rows = answer().path("cuts").path(block);
            assertThat(rows.size()).isEqualTo(4);
            assertThat(rows.path(3).path("cuts_at_most").asInt()).isEqualTo(3);
            assertThat(rows.path(3).path("mounts").path(0).propertyNames()).containsExactly("mount", "largest");
        }
        assertThat(Ran.of("unlock", BRIEF, "--format", "json").out()).doesNotContain("cuts_at_most");
    }

    @Test
    void tellsWhatFitsWithSoManyCuts() {
        Ran ran = Ran.of("unlock", BRIEF, "--cuts", "3");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("Any cuts", "Only cuts that do not show", "cuts at most");
        assertThat(ran.outLines()).allMatch(line -> line.length() <= 100);
        Ran csv = Ran.of("unlock", BRIEF, "--cuts", "3", "--format", "csv");
        assertThat(csv.outLines()).hasSize(1 + 4 * 2 * answer().path("mounts").size());
        assertThat(Ran.of("unlock", BRIEF, "--cuts", "-1").errLines())
                .first()
                .isEqualTo("loopwright: --cuts must be at least 0 and at most 1000 but was -1");
    }

    @Test
    void csvHasARowForEachMountClassAndModSet() {
        int rows = 0;
        for (JsonNode mount : answer().path("mounts")) {
            rows += mount.path("as_delivered").size()
                    + mount.path("impossible").size()
                    + mount.path("unknown").size();
            for (JsonNode unlocked : mount.path("unlocked")) {
                rows += unlocked.path("mod_sets").size();
            }
        }
        Ran csv = Ran.of("unlock", BRIEF, "--format", "csv");
        assertThat(csv.code()).isZero();
        assertThat(csv.outLines()).hasSize(rows + 1);
    }

    @Test
    void aMountNarrowsAndAViewNeverLooksWhole() {
        String mount = answer().path("mounts").path(0).path("mount").asString();
        Ran ran = Ran.of("unlock", BRIEF, "--mount", mount, "--top", "1");
        assertThat(ran.code()).isZero();
        assertThat(ran.outLines().stream().filter(l -> l.matches("[a-z]+:  .*")))
                .singleElement()
                .asString()
                .startsWith(mount + ":");
        assertThat(ran.out()).contains("more are not shown: --top ");
    }

    @Test
    void beingStoppedIsMarked() {
        Ran late = Ran.of("unlock", BRIEF, "--time", "0.000001");
        assertThat(late.code()).isEqualTo(4);
        assertThat(late.out()).contains("INCOMPLETE (time limit of ").doesNotContain("Complete");
        Ran json = Ran.of("unlock", BRIEF, "--time", "0.000001", "--format", "json");
        JsonNode answer =
                JsonMapper.shared().readTree(json.out()).path("answers").path(0);
        assertThat(answer.path("complete").asBoolean()).isFalse();
        assertThat(answer.path("incomplete_because").asString()).startsWith("time limit of ");
    }

    @Test
    void withAndWithoutAreChecked() {
        assertThat(Ran.of("unlock", BRIEF, "--with", "longer-feet").code()).isZero();
        assertThat(Ran.of("unlock", BRIEF, "--mount", "rof").errLines())
                .first()
                .isEqualTo("loopwright: no mount \"rof\". Maybe roof?");
        assertThat(Ran.of("unlock", BRIEF, "--with", "longer-fet").errLines())
                .first()
                .isEqualTo("loopwright: no mod of slim \"longer-fet\". Maybe longer-feet?");
    }
}
