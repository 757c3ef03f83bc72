package loopwright.catalog;

import static loopwright.catalog.CheckAcrossItemsTest.broken;
import static loopwright.catalog.CheckAcrossItemsTest.problems;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Grilles over openings, rules for screws and paint, colours of a brief: with the literal messages. */
class WorkshopProblemsTest {

    private static final String CUBE = "catalogs/chassis/cube.yaml";
    private static final String PRACTICE = "shared/practice.yaml";
    private static final String BRIEF = "scenarios/brief.yaml";

    private static final String LOOK = """
            look:
              colours:
                - {id: black, title: Black, on: paint, lab: {lightness: 20, green_red: 0, blue_yellow: 0}, gloss: satin}
                - {id: amber, title: Amber, on: coolant, lab: {lightness: 60, green_red: 20, blue_yellow: 60},
                    gloss: clear, drops_per_L: 6}
              matches:
                - {one: black, other: amber}
            """;

    private static TinyCatalog withLook(Path folder, String from, String to) {
        TinyCatalog tiny = TinyCatalog.in(folder);
        tiny.change(BRIEF, "terms:\n", LOOK + "terms:\n");
        return from.isEmpty() ? tiny : tiny.change(BRIEF, from, to);
    }

    private static String brief(String place, String message) {
        return BRIEF + ":" + place + ": brief \"brief-1\": " + message;
    }

    @Test
    void aGrilleLiesOverItsFans(@TempDir Path folder) {
        assertThat(broken(folder, CUBE, "free_area: 0.8, added", "free_area: 0.7, grille: q-1, added"))
                .isEmpty();
    }

    @Test
    void aGrilleIsThere(@TempDir Path folder) {
        assertThat(broken(folder, CUBE, "free_area: 0.8, added", "free_area: 0.7, grille: q-2, added"))
                .singleElement()
                .asString()
                .contains("mods[1].effect.airways[0].grille: found \"q-2\", allowed the id of a grille. Maybe q-1?");
    }

    @Test
    void aGrilleIsAsOpenAsItsAirway(@TempDir Path folder) {
        assertThat(broken(folder, CUBE, "free_area: 0.8, added", "free_area: 0.8, grille: q-1, added"))
                .singleElement()
                .asString()
                .contains("mods[1].effect.airways[0].free_area: found 0.8, allowed 0.7, as grille \"q-1\" has it");
    }

    @Test
    void aGrilleIsForFansThatHangThere(@TempDir Path folder) {
        TinyCatalog tiny = TinyCatalog.in(folder)
                .change("catalogs/grilles.yaml", "2x140", "2x92")
                .change(CUBE, "free_area: 0.8, added", "free_area: 0.7, grille: q-1, added");
        assertThat(problems(tiny))
                .singleElement()
                .asString()
                .contains("mods[1].effect.airways[0].grille: found a grille for 92 fans, allowed one for a size of fan"
                        + " that hangs at mount \"roof\"");
    }

    @Test
    void everyMaterialHasItsEngagementOnce(@TempDir Path folder) {
        assertThat(broken(folder, PRACTICE, "{material: plastic, diameters: 2}", "{material: steel, diameters: 2}"))
                .hasSize(2)
                .anyMatch(p ->
                        p.contains("fastening.engagement[2].material: found steel a second time, allowed each once"))
                .anyMatch(p -> p.contains("fastening.engagement: found nothing for plastic, allowed a row for each of"
                        + " steel, aluminium, plastic"));
    }

    @Test
    void aDriverHasAnIdOfItsOwn(@TempDir Path folder) {
        String one = "{id: stub, title: Stub, shaft_mm: 30, shaft_across_mm: 8, hand_mm: 55, hand_across_mm: 50}";
        String fixed = "    - {holds: supply, thread: 6-32, length_mm: 6, count: 4}\n";
        assertThat(broken(folder, PRACTICE, fixed, fixed + "  drivers: [" + one + "]\n"))
                .isEmpty();
        assertThat(broken(folder.resolve("other"), PRACTICE, fixed, fixed + "  drivers: [" + one + ", " + one + "]\n"))
                .singleElement()
                .asString()
                .contains(
                        "fastening.drivers[1].id: found \"stub\" a second time, allowed an id that no other driver has");
    }

    @Test
    void aFaceComesOffOnce(@TempDir Path folder) {
        assertThat(broken(folder, CUBE, "    shell:\n", "    shell:\n      comes_off: [left, roof]\n"))
                .isEmpty();
        assertThat(broken(folder.resolve("other"), CUBE, "    shell:\n", "    shell:\n      comes_off: [left, left]\n"))
                .singleElement()
                .asString()
                .contains("shell.comes_off[1]: found left a second time, allowed each face once");
    }

    @Test
    void everySurfaceHasItsPaintSystemOnce(@TempDir Path folder) {
        assertThat(broken(folder, PRACTICE, "surface: plastic", "surface: metal"))
                .hasSize(2)
                .anyMatch(p -> p.contains(
                        "finishing.systems: found 2 systems for metal, allowed exactly one for each" + " surface"))
                .anyMatch(p -> p.contains("found 0 systems for plastic"));
    }

    @Test
    void coatsRise(@TempDir Path folder) {
        assertThat(broken(
                        folder,
                        PRACTICE,
                        "coats: {least: 1, planned: 2, most: 2}",
                        "coats: {least: 3, planned: 2, most: 2}"))
                .singleElement()
                .asString()
                .contains("allowed least at most planned, planned at most most");
    }

    @Test
    void coatsAreOfSomething(@TempDir Path folder) {
        assertThat(broken(folder, PRACTICE, "{what: Strip}", "{what: Strip, product: clear}"))
                .singleElement()
                .asString()
                .contains("allowed product and coats together, or neither");
    }

    @Test
    void windowsRunForwards(@TempDir Path folder) {
        assertThat(broken(folder, PRACTICE, "recoat_within_h: 1", "recoat_within_h: 49"))
                .singleElement()
                .asString()
                .contains("finishing.cure.recoat_within_h: found 49.0, allowed at most recoat_after_h, 48.0");
        assertThat(broken(folder.resolve("other"), PRACTICE, "face_mm: 0.1", "face_mm: 0.2"))
                .singleElement()
                .asString()
                .contains("finishing.film.face_mm: found 0.2, allowed at most face_most_mm, 0.15");
    }

    @Test
    void aFlashIsShorterThanTheRecoatWindow(@TempDir Path folder) {
        assertThat(broken(folder, PRACTICE, "flash: {low_min: 5, high_min: 15}", "flash: {low_min: 5, high_min: 61}"))
                .singleElement()
                .asString()
                .contains(
                        "finishing.systems[0].steps[0].flash.high_min: found 61, allowed at most cure.recoat_within_h,"
                                + " 1.0 h");
        assertThat(broken(
                        folder.resolve("other"),
                        PRACTICE,
                        "flash: {low_min: 5, high_min: 15}",
                        "flash: {low_min: 5, high_min: 60}"))
                .isEmpty();
        assertThat(broken(
                        folder.resolve("third"),
                        PRACTICE,
                        "{what: Strip}",
                        "{what: Strip, flash: {low_min: 5, high_min: 9}}"))
                .singleElement()
                .asString()
                .contains("allowed a flash only where a product is sprayed");
    }

    @Test
    void aThreadHasItsRow(@TempDir Path folder) {
        assertThat(broken(folder, "catalogs/covers.yaml", "thread: m3", "thread: m4"))
                .singleElement()
                .asString()
                .contains("fixing.thread: found m4, allowed a thread that shared/standards.yaml has a row for");
    }

    @Test
    void aLookIsFine(@TempDir Path folder) {
        assertThat(problems(withLook(folder, "", ""))).isEmpty();
    }

    @Test
    void coloursHaveIdsOfTheirOwn(@TempDir Path folder) {
        assertThat(problems(withLook(folder, "id: amber", "id: black")))
                .anyMatch(
                        p -> p.contains("look.colours[1].id: found \"black\" a second time, allowed an id that no other"
                                + " colour has"));
    }

    @Test
    void pairsAreOfTwoColoursThatAreThere(@TempDir Path folder) {
        assertThat(problems(withLook(folder, "other: amber", "other: ambre")))
                .containsExactly(brief(
                        "34:27",
                        "look.matches[0].other: found \"ambre\", allowed the id of a colour of this brief. Maybe"
                                + " amber?"));
        assertThat(problems(withLook(folder.resolve("other"), "other: amber", "other: black")))
                .singleElement()
                .asString()
                .contains("look.matches[0].other: found \"black\" twice, allowed two different colours");
    }

    @Test
    void dyeIsForCoolant(@TempDir Path folder) {
        assertThat(problems(withLook(folder, "on: coolant", "on: tube")))
                .singleElement()
                .asString()
                .contains("look.colours[1].drops_per_L: found dye on something else than coolant, allowed one dye, on a"
                        + " colour with on: coolant");
    }

    @Test
    void lightnessEndsAtAHundred(@TempDir Path folder) {
        assertThat(problems(withLook(folder, "lightness: 60", "lightness: 101")))
                .singleElement()
                .asString()
                .contains("look.colours[1].lab.lightness: found 101, allowed 0 to 100");
    }
}
