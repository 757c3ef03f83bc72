package loopwright.catalog.standard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.basis.SizeMm;
import loopwright.catalog.basis.Span;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Cover;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.Supply;
import loopwright.catalog.standard.Standards.BoardOutline;
import loopwright.quantity.Dimension;
import org.junit.jupiter.api.Test;

/** The invented catalogue keeps to real standards where it names one. Lengths in hundredths of a millimetre. */
class DemoKeepsStandardsTest {

    private static final Catalog CATALOG = CatalogReader.read(Path.of("catalogs"));

    /**
     * Faces of design guide 336521 (secondary). Deeper ATX bodies keep the face; SFX bodies have their one length, and a
     * measured one may be half a millimetre off it.
     */
    @Test
    void suppliesKeepTheFaceOfTheirForm() {
        assertThat(CATALOG.all(Supply.class)).isNotEmpty().allSatisfy(supply -> {
            SizeMm body = supply.body();
            switch (supply.form()) {
                case ATX -> {
                    assertThat(sizes(body).subList(1, 3)).containsExactly(15000, 8600);
                    assertThat(body.lengthMm().valueHmm()).isBetween(14000, 20000);
                }
                case SFX -> {
                    assertThat(sizes(body).subList(1, 3)).containsExactly(12500, 6350);
                    assertThat(body.lengthMm().valueHmm()).isBetween(9950, 10050);
                }
                case SFX_L -> {
                    assertThat(sizes(body).subList(1, 3)).containsExactly(12500, 6350);
                    assertThat(body.lengthMm().valueHmm()).isBetween(12950, 13050);
                }
            }
        });
    }

    /**
     * SFF-8201: 69.85 wide, at most 100.45 long (from memory), 5, 7, 9.5 or 15 high. SFF-8301: 101.6 wide, 146 to 147
     * long, 19.9 to 26.1 high (secondary). M.2 2280: 22 × 80 (its name says so).
     */
    @Test
    void drivesKeepTheBodyOfTheirForm() {
        assertThat(CATALOG.all(Drive.class)).isNotEmpty().allSatisfy(drive -> {
            SizeMm body = drive.body();
            switch (drive.form()) {
                case D2_5 -> {
                    assertThat(body.widthMm().valueHmm()).isEqualTo(6985);
                    assertThat(body.lengthMm().valueHmm()).isBetween(9990, 10045);
                    assertThat(body.heightMm().valueHmm()).isIn(500, 700, 950, 1500);
                }
                case D3_5 -> {
                    assertThat(body.widthMm().valueHmm()).isEqualTo(10160);
                    assertThat(body.lengthMm().valueHmm()).isBetween(14600, 14700);
                    assertThat(body.heightMm().valueHmm()).isBetween(1990, 2610);
                }
                case M2 -> assertThat(sizes(body).subList(0, 2)).containsExactly(8000, 2200);
            }
        });
    }

    /** What stands on a board stands on the board: solid zones, sockets and slot; a plug's room may begin there and end past it. */
    @Test
    void zonesLieWithinTheOutline() {
        assertThat(CATALOG.all(Board.class)).isNotEmpty().allSatisfy(board -> {
            BoardOutline outline = CATALOG.standards().boards().stream()
                    .filter(b -> b.form() == board.form())
                    .findFirst()
                    .orElseThrow();
            int lengthHmm = outline.lengthMm().valueHmm();
            int widthHmm = outline.widthMm().valueHmm();
            for (Board.Zone zone : board.zones()) {
                if (zone.room()) {
                    assertThat(zone.lengthMm().from().valueHmm()).isBetween(0, lengthHmm);
                    assertThat(zone.widthMm().from().valueHmm()).isBetween(0, widthHmm);
                } else {
                    assertWithin(board.id() + " " + zone.id(), zone.lengthMm(), lengthHmm);
                    assertWithin(board.id() + " " + zone.id(), zone.widthMm(), widthHmm);
                }
            }
            assertWithin(board.id() + " memory", board.sockets().memory().lengthMm(), lengthHmm);
            assertWithin(board.id() + " memory", board.sockets().memory().widthMm(), widthHmm);
            assertThat(board.sockets().processorLengthMm().valueHmm()).isBetween(0, lengthHmm);
            assertThat(board.sockets().processorWidthMm().valueHmm()).isBetween(0, widthHmm);
            assertThat(board.sockets().slotLengthMm().valueHmm()).isBetween(0, lengthHmm);
        });
    }

    /**
     * A raised cover is fixed by four screws a fan, so one for two fans by eight. Common practice, no source; a convention
     * of the data: no rule in the code asks for it. How many fans a cover is for is read from its outline.
     */
    @Test
    void aTwoFanCoverIsFixedByEightScrews() {
        List<Cover> twoFans =
                CATALOG.all(Cover.class).stream().filter(c -> fansIn(c) == 2).toList();

        assertThat(twoFans)
                .hasSizeGreaterThanOrEqualTo(2)
                .allSatisfy(c -> assertThat(c.fixing().screws()).isEqualTo(8));
        assertThat(CATALOG.all(Cover.class))
                .allSatisfy(c -> assertThat(c.fixing().screws()).isEqualTo(4 * fansIn(c)));
    }

    private static int fansIn(Cover cover) {
        return cover.body().lengthMm().valueHmm() / cover.body().widthMm().valueHmm()
                + (cover.body().lengthMm().valueHmm() % cover.body().widthMm().valueHmm()
                                > cover.body().widthMm().valueHmm() / 2
                        ? 1
                        : 0);
    }

    private static List<Integer> sizes(SizeMm body) {
        return List.of(
                body.lengthMm().valueHmm(),
                body.widthMm().valueHmm(),
                body.heightMm().valueHmm());
    }

    private static void assertWithin(String what, Span span, int sizeHmm) {
        assertThat(hmm(span.from())).as(what).isGreaterThanOrEqualTo(0);
        assertThat(hmm(span.to())).as(what).isLessThanOrEqualTo(sizeHmm);
    }

    private static int hmm(Dimension dimension) {
        return dimension.valueHmm();
    }
}
