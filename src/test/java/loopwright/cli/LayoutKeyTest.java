package loopwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every command about a brief takes a layout's key. */
class LayoutKeyTest {

    private static final String BRIEF = "scenarios/slim-desk.yaml";

    /** A layout that needs something done: the first of the CSV with a mod set. */
    private static String[] aLayoutWithMods() {
        return Ran.of("fit", BRIEF, "--format", "csv").outLines().stream()
                .map(l -> l.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)"))
                .filter(f -> f[0].equals("slim") && !f[3].isEmpty())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void unlockTellsEveryWayToHaveTheLayout() {
        String[] layout = aLayoutWithMods();
        Ran ran = Ran.of("unlock", BRIEF, "--layout", layout[1], "--format", "csv");
        assertThat(ran.code()).isZero();
        assertThat(ran.outLines()).anyMatch(l -> l.contains("," + layout[1] + ",layout," + layout[3] + ","));
        assertThat(Ran.of("unlock", BRIEF, "--layout", layout[1]).out()).contains(layout[1] + ":  ", "  do  ");
    }

    @Test
    void rankKeepsToTheLayout() {
        String[] layout = aLayoutWithMods();
        Ran ran = Ran.of("rank", BRIEF, "--layout", layout[1], "--format", "csv");
        assertThat(ran.outLines().stream().skip(1)).allMatch(l -> l.split(",")[3].equals(layout[1]));
    }

    @ParameterizedTest
    @ValueSource(strings = {"fit", "unlock", "rank"})
    void aKeyThatIsNotThereIsANo(String command) {
        assertThat(Ran.of(command, BRIEF, "--layout", "22222-22222").code()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"fit", "unlock", "rank"})
    void whatCannotBeAKeyIsRefused(String command) {
        assertThat(Ran.of(command, BRIEF, "--layout", "no-key").code()).isEqualTo(2);
    }
}
