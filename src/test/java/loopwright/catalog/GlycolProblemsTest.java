package loopwright.catalog;

import static loopwright.catalog.CheckAcrossItemsTest.broken;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A coolant says how much glycol is in it, once, by mass or by volume; with the literal messages. */
class GlycolProblemsTest {

    private static final String FILE = "catalogs/coolants.yaml";

    private static List<String> of(Path folder, String baseAndShare) {
        return broken(folder, FILE, "base: water, glycol_mass_percent: 0", baseAndShare);
    }

    private static String coolant(String place, String message) {
        return FILE + ":" + place + ": coolant \"w-1\": " + message;
    }

    @Test
    void aGlycolByMassOrByVolumeIsFine(@TempDir Path folder) {
        assertThat(of(folder, "base: propylene-glycol, glycol_mass_percent: 40"))
                .isEmpty();
        assertThat(of(folder, "base: propylene-glycol, glycol_volume_percent: 60"))
                .isEmpty();
        assertThat(of(folder, "base: ethylene-glycol, glycol_volume_percent: 57.8"))
                .isEmpty();
    }

    @Test
    void waterMaySayZeroOrNothing(@TempDir Path folder) {
        assertThat(of(folder, "base: water")).isEmpty();
        assertThat(of(folder, "base: water, glycol_volume_percent: 0")).isEmpty();
    }

    @Test
    void aBarePercentageMustSayMassOrVolume(@TempDir Path folder) {
        assertThat(of(folder, "base: propylene-glycol, glycol_percent: 40"))
                .containsExactly(coolant(
                        "4:95",
                        "glycol_percent: found an unknown field, allowed id, title, variant_of, buy, base,"
                                + " glycol_mass_percent, glycol_volume_percent, inhibited, change_months, additives."
                                + " Say mass or volume: glycol_mass_percent or glycol_volume_percent."));
    }

    @Test
    void aGlycolSaysItsShare(@TempDir Path folder) {
        assertThat(of(folder, "base: propylene-glycol"))
                .containsExactly(coolant(
                        "4:77",
                        "base: found a glycol without its share, allowed exactly one of glycol_mass_percent and"
                                + " glycol_volume_percent."
                                + " The same number is another mixture by mass than by volume."));
    }

    @Test
    void aGlycolSaysItsShareOnce(@TempDir Path folder) {
        assertThat(of(folder, "base: ethylene-glycol, glycol_mass_percent: 25, glycol_volume_percent: 22.9"))
                .containsExactly(coolant(
                        "4:142",
                        "glycol_volume_percent: found a second share beside glycol_mass_percent, allowed exactly one"
                                + " of glycol_mass_percent and glycol_volume_percent."
                                + " The same number is another mixture by mass than by volume."));
    }

    @Test
    void waterHasNoGlycol(@TempDir Path folder) {
        assertThat(of(folder, "base: water, glycol_mass_percent: 25"))
                .containsExactly(coolant(
                        "4:105",
                        "glycol_mass_percent: found 25.0 % of glycol in water, allowed 0 or no such field."
                                + " Or give the base that it is mixed with."));
    }

    @Test
    void ethyleneGlycolEndsAtSixtyByMass(@TempDir Path folder) {
        assertThat(of(folder, "base: ethylene-glycol, glycol_volume_percent: 57.9"))
                .containsExactly(coolant(
                        "4:117",
                        "glycol_volume_percent: found 57.9 %, allowed at most 57.8 % of ethylene glycol."
                                + " That is 60 % by mass; beyond, its properties are not known here."));
        assertThat(of(folder, "base: propylene-glycol, glycol_mass_percent: 60.1"))
                .containsExactly(coolant("4:116", "glycol_mass_percent: found 60.1, allowed 0 to 60"));
    }
}
