package loopwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What {@code rank} answers when there is little or nothing to rank, and in its other formats. */
class RankCommandTest {

    @Test
    void saysThatNothingFits() {
        Ran ran = Ran.of("rank", "scenarios/nothing-fits.yaml");
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.outLines()).contains("Nothing fits, so there is nothing to rank.");
    }

    @Test
    void neverCallsAStoppedSearchANo() {
        Ran ran = Ran.of("rank", "scenarios/small-box.yaml", "--time", "0.001");
        assertThat(ran.code()).isEqualTo(4);
        assertThat(ran.outLines()).contains("No build found yet: the search was stopped before it was done.");
        assertThat(ran.out()).contains("INCOMPLETE (time limit of 0.001 s)").doesNotContain("left out");
    }

    @Test
    void csvOfAStoppedSearchSaysSo() {
        Ran ran = Ran.of("rank", "scenarios/small-box.yaml", "--time", "0.001", "--format", "csv");
        assertThat(ran.code()).isEqualTo(4);
        assertThat(ran.outLines().get(1)).startsWith("squat-box,INCOMPLETE: time limit of 0.001 s,");
    }

    @Test
    void namesALayoutThatIsNotThere() {
        Ran ran = Ran.of("rank", "scenarios/slim-desk.yaml", "--layout", "22222-22222");
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.outLines()).contains("No layout with the key 22222-22222 fits here: fit lists the keys.");
    }

    @Test
    void refusesWhatCannotBeAKey() {
        assertThat(Ran.of("rank", "scenarios/slim-desk.yaml", "--layout", "nonsense")
                        .code())
                .isEqualTo(2);
        assertThat(Ran.of("rank", "scenarios/slim-desk.yaml", "--top", "0").code())
                .isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"tight-budget", "slim-desk", "micro"})
    void staysWithinAHundredColumns(String brief) {
        Ran ran = Ran.of("rank", "scenarios/" + brief + ".yaml", "--all");
        assertThat(ran.code()).isZero();
        assertThat(ran.outLines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void jsonStartsFromTheFixedNames() {
        Ran ran = Ran.of("rank", "scenarios/slim-desk.yaml", "--format", "json");
        assertThat(ran.out())
                .contains(
                        "\"schema\"",
                        "\"program\"",
                        "\"catalog\"",
                        "\"brief\"",
                        "\"chassis\"",
                        "\"complete\"",
                        "\"unbeaten\"",
                        "\"builds\"",
                        "\"key\"",
                        "\"layout\"",
                        "\"parts\"",
                        "\"mods\"",
                        "\"cost_cents\"",
                        "\"currency\"",
                        "\"coolant_over_room_K\"",
                        "\"coolant_over_room_band_K\"",
                        "\"noise_dBA\"",
                        "\"labour_min\"",
                        "\"tightest\"",
                        "\"fit_probability\"");
    }

    @Test
    void csvHasARowABuild() {
        Ran ran = Ran.of("rank", "scenarios/slim-desk.yaml", "--format", "csv", "--top", "2");
        assertThat(ran.outLines().get(0)).startsWith("chassis,list,key,layout,stacks,mods,cost,currency");
        assertThat(ran.outLines().stream().filter(l -> l.contains(",unbeaten,")))
                .isNotEmpty();
        assertThat(ran.outLines().stream().filter(l -> l.contains(",by cost,"))).hasSize(2);
    }

    @Test
    void eachOrderPutsItsOwnFigureFirst() {
        Ran cheap = Ran.of("rank", "scenarios/slim-desk.yaml", "--format", "csv", "--top", "3");
        Ran cool = Ran.of("rank", "scenarios/slim-desk.yaml", "--format", "csv", "--top", "3", "--by", "temperature");
        assertThat(column(cheap, "by cost", 6)).isSorted();
        assertThat(column(cool, "by temperature", 8)).isSorted();
    }

    private static java.util.List<Double> column(Ran ran, String list, int index) {
        return ran.outLines().stream()
                .map(l -> l.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)"))
                .filter(f -> f.length > index && f[1].equals(list))
                .map(f -> Double.parseDouble(f[index]))
                .toList();
    }
}
