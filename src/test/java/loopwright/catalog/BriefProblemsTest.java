package loopwright.catalog;

import static loopwright.catalog.CheckAcrossItemsTest.broken;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import loopwright.catalog.read.ProblemsException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A brief against the catalogue, with the literal messages. */
class BriefProblemsTest {

    private static final String FILE = "scenarios/brief.yaml";

    private static String brief(String place, String message) {
        return FILE + ":" + place + ": brief \"brief-1\": " + message;
    }

    @Test
    void namesExist(@TempDir Path folder) {
        assertThat(broken(folder, FILE, "chassis: [cube]", "chassis: [cub]"))
                .containsExactly(brief(
                        "6:11",
                        "chassis[0]: found \"cub\", allowed the id of a chassis of the catalogue. Maybe cube?"));
        assertThat(broken(folder, FILE, "forbid: [raise-roof]", "forbid: [raise-rof]"))
                .containsExactly(brief(
                        "26:19",
                        "limits.mods.forbid[0]: found \"raise-rof\", allowed the id of a mod of the"
                                + " brief's chassis. Maybe raise-roof?"));
        assertThat(broken(folder, FILE, "drives: [d-1]", "drives: [d-2]"))
                .containsExactly(brief(
                        "11:12",
                        "parts.drives[0]: found \"d-2\", allowed the id of a drive of the catalogue." + " Maybe d-1?"));
    }

    @Test
    void everyRoleHasACandidate(@TempDir Path folder) {
        assertThat(broken(folder, FILE, "performance_min: 50", "performance_min: 500"))
                .containsExactly(brief(
                        "9:15",
                        "parts.processor: found no processor that it allows, allowed at least one in"
                                + " the catalogue"));
    }

    @Test
    void socketsAndGenerationsGoTogether(@TempDir Path folder) {
        assertThat(broken(folder, "catalogs/processors.yaml", "socket: S1", "socket: S2"))
                .containsExactly(brief(
                        "9:15",
                        "parts.processor: found no processor for the socket S1, allowed at least one"
                                + " part of a board's socket"));
        assertThat(broken(folder, "catalogs/blocks.yaml", "sockets: [S1]", "sockets: [S2]"))
                .containsExactly(brief(
                        "12:21",
                        "parts.processor_block: found no block for the socket S1, allowed at least"
                                + " one part of the socket"));
        assertThat(broken(folder, "catalogs/memory.yaml", "generation: G5", "generation: G4"))
                .containsExactly(brief(
                        "8:3",
                        "parts.memory: found no memory of generation G5, allowed at least one part of"
                                + " the generation"));
    }

    @Test
    void currencyIsTheCatalogues(@TempDir Path folder) {
        assertThat(broken(folder, FILE, "currency: EUR", "currency: USD"))
                .containsExactly(
                        brief("29:13", "terms.currency: found USD, allowed EUR, the currency of the catalogue"));
    }

    @Test
    void anotherKindOfFileIsNoBrief(@TempDir Path folder) {
        TinyCatalog tiny = TinyCatalog.in(folder);
        Catalog catalog = CatalogReader.read(tiny.folder());
        assertThatThrownBy(() -> CatalogReader.readBrief(tiny.file("catalogs/fans.yaml"), catalog))
                .isInstanceOf(ProblemsException.class)
                .hasMessageEndingWith("catalogs/fans.yaml:1:1: schema: found loopwright/fans/1, allowed"
                        + " loopwright/brief/1. This file is not a brief.");
    }

    @Test
    void theCoolantIsWarmerThanTheRoom(@TempDir Path folder) {
        assertThat(broken(folder, FILE, "coolant_max_C: 40", "coolant_max_C: 22"))
                .anyMatch(p -> p.contains("limits.coolant_max_C: found 22.0, allowed above room_C, 22.0."
                        + " Coolant is never cooler than the room's air."));
    }

    @Test
    void fittingsAreThereAndTakeTheTube(@TempDir Path folder) {
        assertThat(broken(folder, FILE, "tube_m: 2", "tube_m: 2\n  fittings: {any_of: [t-wid]}"))
                .containsExactly(brief(
                        "17:23",
                        "loop.fittings.any_of[0]: found \"t-wid\", allowed the id of a fitting of the catalogue."
                                + " Maybe t-wide?"));
        assertThat(broken(folder, FILE, "tube_m: 2", "tube_m: 2\n  fittings: {any_of: [t-wide]}"))
                .containsExactly(brief(
                        "17:22",
                        "loop.fittings.any_of: found none that takes h-1, allowed a straight fitting for that"
                                + " tube's bore and outside. Name one, or leave fittings out."));
    }

    @Test
    void reservoirsAreThere(@TempDir Path folder) {
        assertThat(broken(folder, FILE, "tube_m: 2", "tube_m: 2\n  reservoirs: {any_of: [v-9]}"))
                .anyMatch(p -> p.contains("loop.reservoirs.any_of[0]: found \"v-9\""));
    }

    @Test
    void aStartDayIsOfOurTime(@TempDir Path folder) {
        for (String far : new String[] {"1999-12-31", "2200-01-01", "0206-03-02"}) {
            assertThat(broken(
                            folder.resolve(far),
                            FILE,
                            "chassis: [cube]",
                            "chassis: [cube]\ncalendar: {start: \"" + far + "\"}"))
                    .containsExactly(brief(
                            "7:19",
                            "calendar.start: found " + far
                                    + ", allowed 2000-01-01 to 2199-12-31. Maybe the year is mistyped?"));
        }
        for (String near : new String[] {"2000-01-01", "2199-12-31"}) {
            assertThat(broken(
                            folder.resolve(near),
                            FILE,
                            "chassis: [cube]",
                            "chassis: [cube]\ncalendar: {start: \"" + near + "\"}"))
                    .isEmpty();
        }
    }

    @Test
    void aCalendarHasDatesAndADayToWorkOn(@TempDir Path folder) {
        assertThat(broken(folder, FILE, "chassis: [cube]", "chassis: [cube]\ncalendar: {start: \"2026-02-30\"}"))
                .containsExactly(brief(
                        "7:12",
                        "calendar: found values that do not go together, allowed start as YYYY-MM-DD, not 2026-02-30"));
        assertThat(broken(folder, FILE, "chassis: [cube]", "chassis: [cube]\ncalendar: {days_off: [sonday]}"))
                .containsExactly(brief(
                        "7:23",
                        "calendar.days_off[0]: found the text \"sonday\", allowed monday, tuesday, wednesday, thursday, friday,"
                                + " saturday, sunday. Maybe monday?"));
        assertThat(broken(
                        folder,
                        FILE,
                        "chassis: [cube]",
                        "chassis: [cube]\ncalendar: {days_off: [monday, tuesday, wednesday, thursday, friday, saturday,"
                                + " sunday]}"))
                .containsExactly(
                        brief(
                                "7:12",
                                "calendar: found values that do not go together, allowed days_off that leave a day to work on"));
    }
}
