package loopwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Every kind of fact as the builder reads it; numbers by hand from the demo's files. */
class WhyCommandTest {

    private static final String DEMO = "scenarios/demo.yaml";

    private static Ran why(String brief, String format, String... wants) {
        List<String> args = new ArrayList<>(List.of("why", brief, "--format", format));
        if (brief.contains("tight-budget")) {
            // Its other chassis has none of these mods.
            args.addAll(List.of("--chassis", "micro-tower"));
        }
        for (String want : wants) {
            args.addAll(List.of("--want", want));
        }
        return Ran.of(args.toArray(String[]::new));
    }

    private static JsonNode answer(Ran ran) {
        return JsonMapper.shared().readTree(ran.out()).path("answers").path(0);
    }

    /** The sentences of all conflicts, one a fact. */
    private static List<String> sentences(JsonNode answer, String list) {
        List<String> out = new ArrayList<>();
        for (JsonNode one : answer.path(list)) {
            for (JsonNode fact : one.path(list.equals("ways_out") ? "changes" : "facts")) {
                out.add(fact.path("sentence").asString());
            }
        }
        return out;
    }

    static Stream<Arguments> facts() {
        return Stream.of(
                Arguments.of(
                        DEMO,
                        List.of("with=roof-cover-radiator"),
                        List.of(
                                "you want \"raised cover that takes the radiator, over two rings\" (roof-cover-radiator)"
                                        + " done",
                                "the brief forbids \"raised cover that takes the radiator, over two rings\""
                                        + " (roof-cover-radiator)")),
                Arguments.of(
                        DEMO,
                        List.of("with=side-window", "with=rear-grille-cut"),
                        List.of("the brief allows at most 1 cut that shows, not 2")),
                Arguments.of(
                        DEMO,
                        List.of("with=front-open", "with=front-insert-140"),
                        List.of(
                                "\"insert panel for two 140 fans in the opened front\" (front-insert-140) and \"cut a strip"
                                        + " in the front sheet and set the trim off\" (front-open) cannot both be done")),
                Arguments.of(
                        DEMO,
                        List.of("supply=supply-sfx-600", "without=sfx-plate-in"),
                        List.of(
                                "you want supply-sfx-600 as the supply",
                                "you want \"plate that hangs a small supply in place of the shelf\" (sfx-plate-in) not"
                                        + " done",
                                "no place that can be used holds the supply (supply-sfx-600)")),
                Arguments.of(
                        DEMO,
                        List.of("floor=2x140", "without=longer-feet"),
                        List.of(
                                "you want a 2x140 radiator at the floor",
                                "outside the floor are 10 mm of air; a stack wants 15 mm")),
                Arguments.of(
                        DEMO,
                        List.of("front=2x120/30", "without=front-open", "without=front-insert-140"),
                        List.of("the front is open by 0.10; the brief wants at least 0.30")),
                Arguments.of(
                        DEMO,
                        List.of("supply=supply-sfx-450", "card=gpu-large-block"),
                        List.of(
                                "the brief's choice of card is gpu-mid-block, gpu-mid-plus-block",
                                "the supply is rated for the sum of worst loads and 25 %: 520 W come to 649 W,"
                                        + " supply-sfx-450 has 450 W; cheapest supply of the catalogue for these parts:"
                                        + " supply-atx-650, 89.90 EUR")),
                Arguments.of(
                        DEMO,
                        List.of("front=2x140/45", "without=drive-tower-out"),
                        List.of(
                                "you want a 2x140 radiator 45 mm thick at the front",
                                "the front has holes for 1x140 and 2x120; 2x140 comes with \"insert panel for two 140 fans"
                                        + " in the opened front\" (front-insert-140)",
                                "front fans need 71 mm inwards, 2 mm are there to drive tower on the floor: 69 mm short")),
                Arguments.of(
                        "scenarios/micro.yaml",
                        List.of("with=front-pattern-360", "without=front-sockets-moved"),
                        List.of(
                                "\"drill the front for three 120 fans and cut a strip\" (front-pattern-360) needs \"move"
                                        + " the front sockets into the roof's front edge\" (front-sockets-moved)")),
                // 1 and 2 hidden cuts.
                Arguments.of(
                        "scenarios/tight-budget.yaml",
                        List.of("with=shroud-nose-cut", "with=roof-cover-120"),
                        List.of("the brief allows at most 2 cuts in all, not 3")),
                Arguments.of(
                        "scenarios/quiet-above-all.yaml",
                        List.of("side=radiator"),
                        List.of("what hangs at the side is not measured: mid-tower.mounts.side.inset_mm")),
                Arguments.of(
                        "scenarios/nothing-fits.yaml",
                        List.of(),
                        List.of(
                                "you want a radiator of the brief on some mount",
                                "the roof has holes for 1x92; no mod of this chassis makes 2x120",
                                "left radiator and front sockets and switch come 17 mm too close from front to rear",
                                "left fans need 46 mm inwards, 31 mm are there to supply (supply-sfx-450): 15 mm"
                                        + " short")));
    }

    @ParameterizedTest
    @MethodSource("facts")
    void factsAreSentencesWithTheirNumbers(String brief, List<String> wants, List<String> sentences) {
        Ran ran = why(brief, "json", wants.toArray(String[]::new));

        assertThat(ran.code()).isEqualTo(ExitCode.NO);
        assertThat(ran.err()).isEmpty();
        assertThat(answer(ran).path("can_be_had").asBoolean()).isFalse();
        assertThat(answer(ran).path("complete").asBoolean()).isTrue();
        assertThat(answer(ran).path("more_conflicts").asBoolean()).isFalse();
        assertThat(sentences(answer(ran), "conflicts")).containsAll(sentences);
    }

    @Test
    void waysOutAreInOrderWithWhatTheyTake() {
        JsonNode ways = answer(why(DEMO, "json", "front=2x140/45", "without=drive-tower-out"))
                .path("ways_out");

        assertThat(sentences(answer(why(DEMO, "json", "front=2x140/45", "without=drive-tower-out")), "ways_out"))
                .containsExactly(
                        "give up front=2x140/45",
                        "give up without=drive-tower-out",
                        "make 69 mm more room between front fans and drive tower on the floor",
                        "have holes at the front where the stack clears everything");
        assertThat(ways.path(0).path("kind").asString()).isEqualTo("wishes");
        assertThat(ways.path(0).path("instead").path(0).path("id").asString()).isEqualTo("instead:front=2x120/30");
        assertThat(ways.path(2).path("kind").asString()).isEqualTo("otherwise");
        assertThat(ways.path(2).path("changes").path(0).path("lack").asDouble()).isEqualTo(69);
        assertThat(ways.path(2).path("changes").path(0).path("unit").asString()).isEqualTo("mm");
        // 25 + 170 minutes and 60 of paint at 42.00 an hour, and 3.00 + 26.00 of material.
        assertThat(ways.path(1).path("cost_cents").asLong()).isEqualTo((25 + 170 + 60) * 70 + 300 + 2600);
        assertThat(ways.path(1).path("labour_min").asInt()).isEqualTo(25 + 170 + 60);
    }

    @Test
    void whatCanBeHadIsToldWithItsLayout() {
        Ran ran = why(DEMO, "table", "front=2x140/45", "rear=1x120");

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("it can be had.", "fits: take out the drive tower; insert panel");
        String key = ran.out().replaceAll("(?s).*layout\\s+([2-9a-z]{5}-[2-9a-z]{5}).*", "$1");
        assertThat(Ran.of("fit", DEMO, "--layout", key).code()).isZero();
    }

    @ParameterizedTest
    @MethodSource("facts")
    void answersInLinesThatFitATerminal(String brief, List<String> wants, List<String> sentences) {
        Ran ran = why(brief, "table", wants.toArray(String[]::new));

        assertThat(ran.outLines()).allMatch(line -> line.length() <= 100);
        assertThat(ran.out()).startsWith("WHY  ").contains("it cannot all be had.", "ways out");
        String words = ran.outLines().stream().map(String::strip).collect(Collectors.joining(" "));
        assertThat(sentences).allMatch(words::contains);
    }

    @Test
    void wishesThatCannotBeReadAreToldAllAtOnce() {
        Ran ran = why(
                DEMO,
                "table",
                "fron=2x140/45",
                "card=gpu-big",
                "front=2x140/99",
                "front=rad-2x14-30a",
                "coolant=hot",
                "ready=2027-01-01",
                "without=side-windo",
                "front");

        assertThat(ran.code()).isEqualTo(ExitCode.COMMAND_LINE);
        assertThat(ran.errLines())
                .contains(
                        "loopwright: --want fron=2x140/45: nothing that can be wished is called fron; maybe front?",
                        "loopwright: --want card=gpu-big: no card is called gpu-big; maybe gpu-mid?",
                        "loopwright: --want front=2x140/99: the catalogue has no radiator 2x140/99; it has 2x140/20,"
                                + " 2x140/30, 2x140/34, 2x140/45, 2x140/60, 2x140/80",
                        "loopwright: --want coolant=hot: write coolant=40C, at most 40 degrees at full load",
                        "loopwright: --want ready=2027-01-01: a day wants --start DATE too: the day the work starts",
                        "loopwright: --want without=side-windo: no mod of short-tower is called side-windo; maybe"
                                + " side-window?",
                        "loopwright: --want front: write WHAT=VALUE, like front=2x140/45 or card=PART-ID")
                .anyMatch(l -> l.startsWith("loopwright: --want front=rad-2x14-30a: write 2x140, 2x140/45, radiator,"));
    }

    @Test
    void neverCallsAStoppedSearchANo() {
        Ran table =
                Ran.of("why", DEMO, "--want", "front=2x140/45", "--want", "without=drive-tower-out", "--time", "0.001");
        Ran json = Ran.of("why", DEMO, "--want", "front=2x140/45", "--time", "0.001", "--format", "json");

        assertThat(table.code()).isEqualTo(ExitCode.INCOMPLETE);
        String words = table.outLines().stream().map(String::strip).collect(Collectors.joining(" "));
        assertThat(words)
                .contains("INCOMPLETE (time limit of 0.001 s): whether it can all be had is not known yet.")
                .doesNotContain("conflict");
        assertThat(answer(json).path("can_be_had").isNull()).isTrue();
        assertThat(answer(json).path("complete").asBoolean()).isFalse();
    }

    @Test
    void spreadsheetsGetARowAFact() {
        Ran ran = why(DEMO, "csv", "floor=2x140", "without=longer-feet");

        assertThat(ran.outLines())
                .first()
                .isEqualTo("chassis,table,number,id,sentence,lack,unit,kind,mods,cost_cents,labour_min,days,brief,"
                        + "catalog,program");
        assertThat(ran.outLines())
                .anyMatch(l -> l.startsWith("short-tower,conflict,1,outside:floor,outside the floor are 10 mm of air;"))
                .anyMatch(l -> l.startsWith("short-tower,way-out,1,wish:floor=2x140,give up floor=2x140,,,wishes,"));
    }

    @Test
    void whatNothingFitsSaysIsWhatWhySays() {
        String fit = Ran.of("fit", "scenarios/nothing-fits.yaml").out();
        String rank = Ran.of("rank", "scenarios/nothing-fits.yaml").out();
        String why = why("scenarios/nothing-fits.yaml", "table").out();

        String conflict = "left radiator and front sockets and switch come 17 mm too close from front to rear";
        assertThat(why).contains(conflict);
        assertThat(fit).contains("Complete: nothing fits.", conflict, "more: why BRIEF tells all");
        assertThat(rank).contains("Nothing fits, so there is nothing to rank.", conflict);
    }
}
