package loopwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What parts draw and what plugs and rails carry: each check broken, with its literal message, and just kept. */
class ElectricProblemsTest {

    private static final String SUPPLIES = "catalogs/supplies.yaml";
    private static final String ROOM = "plug_room_mm: 30";

    private static List<String> broken(Path folder, String file, String from, String to) {
        return CheckAcrossItemsTest.broken(folder, file, from, to);
    }

    /** The words of a problem, without where it stands. */
    private static List<String> words(List<String> problems) {
        return problems.stream().map(p -> p.substring(p.indexOf("\": ") + 3)).toList();
    }

    private static List<String> supply(Path folder, String more) {
        return words(broken(folder, SUPPLIES, ROOM, ROOM + "\n    " + more));
    }

    @Test
    void aCardsPlugsCarryIt(@TempDir Path folder) {
        assertThat(broken(folder, "catalogs/graphics-cards.yaml", "worst_W: 320", "worst_W: 375"))
                .isEmpty();
        assertThat(words(broken(folder, "catalogs/graphics-cards.yaml", "worst_W: 320", "worst_W: 375.1")))
                .containsExactly(
                        "power.worst_W: found 375.1, allowed at most 375 W through its slot and plugs. Is a plug"
                                + " missing?");
    }

    @Test
    void sixPinAndSixteenPinPlugsCountToo(@TempDir Path folder) {
        String electric = "cooling: block\n    electric: {idle_W: 9, six_pin_plugs: 1, sixteen_pin_W: ";
        TinyCatalog tiny = TinyCatalog.in(folder)
                .change("catalogs/graphics-cards.yaml", "cooling: block", electric + "300}")
                .change("catalogs/graphics-cards.yaml", "worst_W: 320", "worst_W: 450.5");
        assertThat(words(CheckAcrossItemsTest.problems(tiny)))
                .containsExactly(
                        "power.worst_W: found 450.5, allowed at most 450 W through its slot and plugs. Is a plug"
                                + " missing?");
        assertThat(words(broken(folder, "catalogs/graphics-cards.yaml", "cooling: block", electric + "310}")))
                .containsExactly("electric.sixteen_pin_W: found 310, allowed a coding of the 16-pin plug: 600, 300");
    }

    @Test
    void aProcessorsPlugsCarryItsPeak(@TempDir Path folder) {
        String file = "catalogs/processors.yaml";
        String peak = "socket: S1\n    electric: {idle_W: 9, peak_W: ";
        assertThat(broken(folder, file, "socket: S1", peak + "235}")).isEmpty();
        assertThat(words(broken(folder, file, "socket: S1", peak + "235.5}")))
                .containsExactly(
                        "electric.peak_W: found 235.5, allowed at most 235 W through 1 processor plug. Is a plug"
                                + " missing?");
        assertThat(words(broken(folder, file, "socket: S1", peak + "139}")))
                .containsExactly("electric.peak_W: found 139, allowed at least its worst, 140 W");
        assertThat(words(broken(folder, file, "worst_W: 140", "worst_W: 236")))
                .containsExactly(
                        "heat.worst_W: found 236, allowed at most 235 W through 1 processor plug. Is a plug missing?");
    }

    /** 850 W: 70 A are 840 W, so low brings at least 10. */
    @Test
    void railsMakeUpTheRating(@TempDir Path folder) {
        assertThat(supply(folder, "rails: {twelve_volt_A: 70, low_W: 10}")).isEmpty();
        assertThat(supply(folder, "rails: {twelve_volt_A: 70, low_W: 9.5}"))
                .containsExactly(
                        "rails.low_W: found 9.5 with 840 W on 12 V, allowed at least 10: all rails together bring"
                                + " the rating");
        assertThat(supply(folder, "rails: {twelve_volt_A: 71, low_W: 100}"))
                .containsExactly(
                        "rails.twelve_volt_A: found 71, 852 W, allowed no more than its rating, 850 W. A supply"
                                + " labelled 650 W often has 52 A.");
        assertThat(supply(folder, "rails: {twelve_volt_A: 70, low_W: 100, sixteen_pin_W: 450}"))
                .containsExactly("rails.sixteen_pin_W: found 450, allowed a coding of the 16-pin plug: 600, 300");
    }

    @Test
    void plugsAgreeWithCables(@TempDir Path folder) {
        String cables = "cables: [{plug: processor-8, plugs: 1, length_mm: 600}, {plug: processor-8, plugs: 1,"
                + " length_mm: 600}, {plug: card-8, plugs: 2, length_mm: 600}, {plug: card-8, plugs: 2, length_mm:"
                + " 600}, {plug: sata, plugs: ";
        assertThat(supply(folder, cables + "6, length_mm: 450}]")).isEmpty();
        assertThat(supply(folder, cables + "5, length_mm: 450}]"))
                .containsExactly(
                        "output.sata_plugs: found 6, allowed the 5 that its cables carry. Is a cable missing?");
    }

    @Test
    void noiseRises(@TempDir Path folder) {
        String first = "noise: [{load_percent: 20, noise_dBA: 15}, ";
        assertThat(supply(folder, first + "{load_percent: 50, noise_dBA: 15}]")).isEmpty();
        assertThat(supply(folder, first + "{load_percent: 20, noise_dBA: 18}]"))
                .containsExactly(
                        "noise[1].load_percent: found 20 after 20, allowed a load that rises from point to point");
        assertThat(supply(folder, first + "{load_percent: 50, noise_dBA: 14}]"))
                .containsExactly("noise[1].noise_dBA: found 14 after 15, allowed a level that never falls");
        assertThat(supply(folder, first + "{load_percent: 50, noise_dBA: 31}]"))
                .containsExactly("noise[1].noise_dBA: found 31, allowed at most its noise_max_dBA, 30");
    }

    /** 1.5 A a contact, three contacts: 54 W at 12 V, 22.5 W at 5 V. */
    @Test
    void aDriveStartsWithinItsPlug(@TempDir Path folder) {
        assertThat(drive(folder, "heat_W: 30\n    electric: {idle_W: 2, start_W: 76.5, low_W: 22.5}"))
                .isEmpty();
        assertThat(drive(folder, "heat_W: 30\n    electric: {idle_W: 2, start_W: 76.6, low_W: 22.5}"))
                .containsExactly(
                        "electric.start_W: found 76.6, allowed at most 54 W on a SATA plug's 12 V beyond low_W");
        assertThat(drive(folder, "heat_W: 30\n    electric: {idle_W: 2, start_W: 40, low_W: 22.6}"))
                .containsExactly("electric.low_W: found 22.6, allowed at most 22.5 W on a SATA plug's 5 V");
        assertThat(drive(folder, "heat_W: 4\n    electric: {idle_W: 4.5, start_W: 3, low_W: 5}"))
                .containsExactly(
                        "electric.idle_W: found 4.5, allowed at most its heat_W, 4",
                        "electric.start_W: found 3, allowed at least its heat_W, 4",
                        "electric.low_W: found 5, allowed at most its heat_W, 4");
    }

    private static List<String> drive(Path folder, String to) {
        return words(broken(folder, "catalogs/drives.yaml", "heat_W: 4", to));
    }

    @Test
    void headersAreNamedOnceAndCounted(@TempDir Path folder) {
        String headers =
                "form: mini-itx\n    headers: [{id: a, use: fan, limit_A: 1}, {id: b, use: pump, limit_A: 2}, {id:"
                        + " c, use: fan, limit_A: 1}, {id: ";
        String file = "catalogs/boards.yaml";
        assertThat(broken(folder, file, "form: mini-itx", headers + "d, use: fan, limit_A: 1}]"))
                .isEmpty();
        assertThat(words(broken(folder, file, "form: mini-itx", headers + "a, use: fan, limit_A: 1}]")))
                .containsExactly("headers[3].id: found a, allowed a name that no other header of the board has");
        assertThat(words(broken(
                        folder,
                        file,
                        "form: mini-itx",
                        "form: mini-itx\n    headers: [{id: a, use: fan, limit_A: 1}]")))
                .containsExactly("electric.fan_headers: found 4, allowed the 1 of its headers");
    }
}
