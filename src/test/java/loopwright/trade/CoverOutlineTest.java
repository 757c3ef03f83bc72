package loopwright.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.TinyCatalog;
import loopwright.catalog.basis.Face;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.catalog.part.Cover;
import loopwright.catalog.read.ProblemsException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Common practice, no source: how exactly a raised cover has to meet its roof, and what it adds outside. */
class CoverOutlineTest {

    /** The tiny catalogue's roof is flat from y = 10 to 340, 330 long, and its cover is centred on it. */
    private static TinyCatalog withCoverOf(Path folder, double lengthMm) {
        return TinyCatalog.in(folder).change("catalogs/covers.yaml", "length_mm: 310", "length_mm: " + lengthMm);
    }

    @ParameterizedTest
    @ValueSource(doubles = {330, 331, 332})
    void anOutlineThatMeetsTheFlatWithinAMillimetreIsNotRefused(double lengthMm, @TempDir Path folder) {
        TinyCatalog tiny = withCoverOf(folder, lengthMm);

        assertThatCode(() -> CatalogReader.read(tiny.folder())).doesNotThrowAnyException();
    }

    @Test
    void oneHundredthMoreIsRefused(@TempDir Path folder) {
        TinyCatalog tiny = withCoverOf(folder, 332.02);

        assertThatThrownBy(() -> CatalogReader.read(tiny.folder()))
                .isInstanceOf(ProblemsException.class)
                .hasMessageContaining("found an outline from 8.99 to 341.01, allowed at most 1.0 mm past the flat");
    }

    /** A convention of the data: over a roof the case grows by the cover's inside height and its skin, elsewhere not at all. */
    @Test
    void aCoverAddsItsInsideHeightAndItsSkin() {
        Catalog catalog = CatalogReader.read(Path.of("catalogs"));
        Set<Face> seen = new TreeSet<>();
        for (Chassis chassis : catalog.all(Chassis.class)) {
            for (Mod mod : chassis.mods()) {
                for (RaisedCover raised : mod.effect().covers()) {
                    Face face = face(chassis, raised);
                    Cover.Body body = catalog.part(Cover.class, raised.cover()).body();
                    int addedHmm =
                            body.insideHeightMm().valueHmm() + body.skinMm().valueHmm();
                    assertThat(mod.look().heightAddedMm().valueHmm())
                            .as("%s of %s", mod.id(), chassis.id())
                            .isEqualTo(face == Face.ROOF ? addedHmm : 0);
                    seen.add(face);
                }
            }
        }
        assertThat(seen).contains(Face.ROOF);
    }

    private static Face face(Chassis chassis, RaisedCover raised) {
        String panel = chassis.mounts().stream()
                .filter(m -> m.id().equals(raised.mount()))
                .map(Mount::panel)
                .findFirst()
                .orElseThrow();
        return chassis.shell().panels().stream()
                .filter(p -> p.id().equals(panel))
                .map(Panel::face)
                .findFirst()
                .orElseThrow();
    }
}
