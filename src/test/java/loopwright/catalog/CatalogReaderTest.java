package loopwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.Radiator;
import loopwright.quantity.Dimension;
import loopwright.quantity.Known;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CatalogReaderTest {

    @Test
    void readsOneOfEverything(@TempDir Path folder) {
        TinyCatalog tiny = TinyCatalog.in(folder);
        Catalog catalog = CatalogReader.read(tiny.folder());
        assertThat(catalog.parts()).hasSize(18);
        assertThat(catalog.currency()).isEqualTo("EUR");
        assertThat(catalog.version()).matches("[0-9a-f]{12}");
        Radiator radiator = catalog.part(Radiator.class, "r-140");
        assertThat(radiator.pattern()).isEqualTo(new Pattern(2, 140));
        assertThat(radiator.body().portOverhangMm()).isEqualTo(new Dimension(3050, 20, Known.MEASURED));
        assertThat(radiator.body().seat().depthToTubeMm()).isEqualTo(Dimension.UNKNOWN);
        assertThat(catalog.part(Drive.class, "d-1").form()).isEqualTo(Drive.DriveForm.D2_5);
        Chassis cube = catalog.chassis("cube");
        assertThat(cube.mods().get(0).rules().requires()).isEmpty();
        assertThat(cube.variantOf()).isEmpty();
        assertThat(cube.mounts().get(0).opening().filterFreeArea()).isEmpty();
        Brief brief = CatalogReader.readBrief(tiny.file("scenarios/brief.yaml"), catalog);
        assertThat(brief.loop().coolant().anyOf()).isEmpty();
        assertThat(brief.limits().leadMaxDays()).isEmpty();
    }

    @Test
    void readingTwiceGivesTheSame(@TempDir Path folder) {
        TinyCatalog tiny = TinyCatalog.in(folder);
        assertThat(CatalogReader.read(tiny.folder())).isEqualTo(CatalogReader.read(tiny.folder()));
    }
}
