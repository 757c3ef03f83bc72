package loopwright.workshop.finish;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.standard.Finishing.Surface;
import loopwright.fit.FitCase;
import loopwright.fit.ModSet;
import loopwright.workshop.template.Demo;
import loopwright.workshop.template.Templates;
import org.junit.jupiter.api.Test;

/** What mods of the demo's short tower leave to paint; areas by hand from its file. */
class PaintedPartsTest {

    private static final Catalog CATALOG = CatalogReader.read(Path.of("catalogs"));
    private static final FitCase PLAIN = fitCase("scenarios/tight-budget.yaml");
    private static final FitCase ASKED = fitCase("scenarios/demo.yaml");

    /** Square hundredths in a square millimetre. */
    private static final long MM2 = 10_000;

    private static FitCase fitCase(String brief) {
        return new FitCase(CATALOG, CATALOG.chassis("short-tower"), CatalogReader.readBrief(Path.of(brief), CATALOG));
    }

    private static ModSet mods(String... ids) {
        long bits = 0;
        for (int i = 0; i < PLAIN.chassis().mods().size(); i++) {
            if (List.of(ids).contains(PLAIN.chassis().mods().get(i).id())) {
                bits |= 1L << i;
            }
        }
        return new ModSet(bits);
    }

    private static String text(FitCase fitCase, String... ids) {
        return PaintedParts.of(fitCase, mods(ids)).all().stream()
                .map(p -> p.id() + " " + p.surface() + " " + p.areaHmm2() / MM2)
                .collect(Collectors.joining(", "));
    }

    @Test
    void nothingDoneNothingPainted() {
        assertThat(text(ASKED)).isEmpty();
        assertThat(text(ASKED, "drive-tower-out", "longer-feet")).isEmpty();
    }

    /** The front sheet: 172 by 396, both sides. */
    @Test
    void anOpenedPanelIsPaintedOnBothSides() {
        assertThat(text(PLAIN, "front-open")).isEqualTo("front-sheet METAL " + 2 * 172 * 396);
    }

    @Test
    void anInsertIsPaintedAndNotWhatItHides() {
        assertThat(text(PLAIN, "front-insert-140")).isEqualTo("insert-front METAL " + 2 * 172 * 396);
    }

    /** The left side: 328 by 406, both sides. */
    @Test
    void aWindowIsInThePanelItsRimLiesOn() {
        assertThat(text(PLAIN, "side-window")).isEqualTo("left-side METAL " + 2 * 328 * 406);
    }

    /** The plate: 156 by 2 by 88, all six faces. */
    @Test
    void whatAModAddsIsPainted() {
        assertThat(text(PLAIN, "sfx-plate-in")).isEqualTo("sfx-plate METAL " + 2 * (156 * 2 + 2 * 88 + 156 * 88));
    }

    /** The cover: lid 248 by 128, walls of 31.5, both sides. */
    @Test
    void aCoverIsPaintedWhereTheBriefAsks() {
        assertThat(text(ASKED, "roof-cover-120"))
                .isEqualTo("cover-2x120 METAL " + 2 * (248 * 128 + 2 * (248 + 128) * 315 / 10));
        assertThat(text(PLAIN, "roof-cover-120")).isEmpty();
        assertThat(PaintedParts.of(PLAIN, mods("roof-cover-120")).asBought()).hasSize(1);
        assertThat(PaintedParts.of(ASKED, mods("roof-cover-120")).all().get(0).hasMinutes())
                .isFalse();
    }

    @Test
    void twoFacesOfFilm() {
        PaintedParts painted = PaintedParts.of(PLAIN, mods("front-open"));
        assertThat(painted.filmHmm("front-sheet")).hasValue(20);
        assertThat(painted.filmHmm("roof-sheet")).isEmpty();
        assertThat(FilmLoss.of(painted.all(), CATALOG.practice().finishing().film()))
                .containsExactly(new FilmLoss(
                        "front-sheet", "slots and holes narrower, sheet thicker under screw heads", 20, 30));
    }

    /** Strip of 95 for two 120 fans: 2 (240 + 95). Two rings of 114. */
    @Test
    void cutsLeaveEdges() {
        List<BareEdge> strip = BareEdge.of(PLAIN, mods("front-open").mods(PLAIN.chassis()), List.of());
        assertThat(strip).singleElement().satisfies(e -> {
            assertThat(e.panel()).isEqualTo("front-sheet");
            assertThat(e.isSteel()).isTrue();
            assertThat(e.lengthHmm()).hasValue(2 * (24_000 + 9_500));
        });
        List<BareEdge> rings = BareEdge.of(PLAIN, mods("roof-cover-120").mods(PLAIN.chassis()), List.of());
        assertThat(rings.get(0).lengthHmm()).hasValue((int) Math.round(2 * Math.PI * 11_400));
        assertThat(BareEdge.of(PLAIN, mods("longer-feet").mods(PLAIN.chassis()), List.of()))
                .isEmpty();
    }

    /** Clear acrylic painted from behind is never sanded, and begins with a solvent test; soft coats come off first. */
    @Test
    void theOrderGoesWithTheKindOfPart() {
        var finishing = CATALOG.practice().finishing();
        String acrylic = PaintPlan.system(finishing, Surface.ACRYLIC_BEHIND).steps().stream()
                .map(s -> s.what())
                .collect(Collectors.joining("; "));
        assertThat(acrylic).startsWith("solvent test").doesNotContain("key with");
        List<String> soft = PaintPlan.system(finishing, Surface.SOFT_TOUCH).steps().stream()
                .map(s -> s.what())
                .toList();
        assertThat(soft.get(0)).contains("test patch");
        assertThat(soft.get(1)).startsWith("strip the soft coat whole");
    }

    /**
     * Metal: a day or two for the test piece, a quarter of an hour after the wash; two coats of metal primer flash, one of two
     * of filler, which then dries 1 to 4 h for sanding; three of colour, one of two of clear.
     */
    @Test
    void waitsAddUp() {
        var system = PaintPlan.system(CATALOG.practice().finishing(), Surface.METAL);
        PaintPlan plan = PaintPlan.of(system, List.of());
        assertThat(plan.waitLowMin()).isEqualTo(1440 + 15 + 2 * 5 + 10 + 60 + 3 * 5 + 10);
        assertThat(plan.waitHighMin()).isEqualTo(2880 + 15 + 2 * 15 + 15 + 240 + 3 * 15 + 15);
    }

    /**
     * An opening of 280 by 140 for two 140 fans. The joint of a side: 0.5 mm, half of what 40 K do to aluminium against
     * steel (about 0.06 mm of 280, 0.03 mm of 140, rounded up), 0.1 mm of film on both edges: 0.77 and 0.74. The sheet is
     * 278.46 by 138.52, both sides.
     */
    @Test
    void anInsertIsAsLargeAsItIsCut() {
        PaintedParts flat = PaintedParts.of(PLAIN, mods("front-insert-140"));
        Templates templates = Templates.of(Demo.setting(
                "short-tower", Set.of("front-insert-140"), List.of(Demo.hung("front", "2x140", 20_000, 10_000))));
        assertThat(flat.cutAs(templates).all())
                .singleElement()
                .satisfies(p -> assertThat(p.areaHmm2()).isEqualTo(2L * 27_846 * 13_852));
        PaintedParts panel = PaintedParts.of(PLAIN, mods("front-open"));
        assertThat(panel.cutAs(templates)).isEqualTo(panel);
    }
}
