package loopwright.catalog.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.part.Board.BoardForm;
import loopwright.catalog.part.Drive.DriveForm;
import loopwright.catalog.part.ScrewThread;
import loopwright.catalog.part.Supply.SupplyForm;
import loopwright.catalog.standard.Standards.BoardOutline;
import loopwright.catalog.standard.Standards.DriveBody;
import loopwright.catalog.standard.Standards.FanPattern;
import loopwright.catalog.standard.Standards.Hole;
import loopwright.catalog.standard.Standards.SupplyFace;
import loopwright.catalog.standard.Standards.ThreadRow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The project's own table of standards against what is published. Millimetres.
 *
 * <p>How sure each value is stands beside its check: seen in the document; secondary (a copy or a public drawing file,
 * the document itself not seen); from memory.
 */
class PublishedStandardsTest {

    private static final Catalog CATALOG = CatalogReader.read(Path.of("catalogs"));
    private static final Standards STANDARDS = CATALOG.standards();

    /** An inch, mm: exact by definition. */
    private static final double INCH_MM = 25.4;

    /** Half a hundredth of a millimetre: what rounding to the file's two decimals may cost. */
    private static final double ROUNDED_MM = 0.005000001;

    /**
     * Outlines: microATX Motherboard Interface Specification 1.2, Table 3, which has ATX too (seen). Mini-ITX: Addendum 1.1
     * to it (secondary). Length runs down the board, 12 in of it in ATX; width away from the rear edge, 9.6 in.
     */
    @ParameterizedTest
    @CsvSource({"MICRO_ATX, 24400, 24400", "ATX, 30500, 24400", "MINI_ITX, 17000, 17000"})
    void boardOutlines(BoardForm form, int lengthHmm, int widthHmm) {
        BoardOutline board = board(form);

        assertThat(board.lengthMm().valueHmm()).isEqualTo(lengthHmm);
        assertThat(board.widthMm().valueHmm()).isEqualTo(widthHmm);
    }

    /** Hole sets: microATX specification 1.2, page 10 (seen; its R and S are left out: copies disagree). Mini-ITX: secondary. */
    @ParameterizedTest
    @CsvSource({"MICRO_ATX, bcfhjlm", "ATX, acfghjklm", "MINI_ITX, cfhj"})
    void holeSets(BoardForm form, String ids) {
        assertThat(String.join("", board(form).holes().stream().map(Hole::id).toList()))
                .isEqualTo(ids);
    }

    /**
     * Distances between holes, free of edges: the inch values of two public drawing files that agree (secondary; the
     * specification's own drawing was not seen), in millimetres by computation.
     */
    @ParameterizedTest(name = "{0}: {1}-{2} {3} {4}")
    @CsvSource({
        "ATX, f, j, width, 13208",
        "ATX, c, h, width, 15494",
        "ATX, j, c, length, 15748",
        "ATX, j, m, width, 7239",
        "ATX, h, l, width, 7239",
        "ATX, c, a, length, 12446",
        "ATX, h, g, length, 12446",
        "ATX, l, k, length, 12446",
        "MICRO_ATX, f, j, width, 13208",
        "MICRO_ATX, c, h, width, 15494",
        "MICRO_ATX, j, c, length, 15748",
        "MICRO_ATX, j, m, width, 7239",
        "MICRO_ATX, h, l, width, 7239",
        "MICRO_ATX, c, b, length, 4572",
        "MINI_ITX, f, j, width, 13208",
        "MINI_ITX, c, h, width, 15494",
        "MINI_ITX, j, c, length, 15748"
    })
    void holeDistances(BoardForm form, String from, String to, String along, int distanceHmm) {
        Hole one = hole(form, from);
        Hole other = hole(form, to);
        int measured = along.equals("length")
                ? other.lengthMm().valueHmm() - one.lengthMm().valueHmm()
                : other.widthMm().valueHmm() - one.widthMm().valueHmm();

        assertThat(measured).isEqualTo(distanceHmm);
    }

    /** Offsets of the mini-ITX holes from its edges, and of every form's from the rear edge: 6.35 and 10.16 (secondary). */
    @ParameterizedTest
    @CsvSource({"MINI_ITX", "MICRO_ATX", "ATX"})
    void holeOffsetsFromTheEdges(BoardForm form) {
        assertThat(hole(form, "f").lengthMm().valueHmm()).isEqualTo(635);
        assertThat(hole(form, "j").lengthMm().valueHmm()).isEqualTo(635);
        assertThat(hole(form, "c").widthMm().valueHmm()).isEqualTo(1016);
        assertThat(hole(form, "f").widthMm().valueHmm()).isEqualTo(3302);
    }

    /** The three forms share their holes: one set of standoffs takes all of them. */
    @Test
    void formsShareTheirHoles() {
        for (Hole hole : board(BoardForm.MINI_ITX).holes()) {
            assertThat(board(BoardForm.MICRO_ATX).holes()).contains(hole);
            assertThat(board(BoardForm.ATX).holes()).contains(hole);
        }
    }

    /**
     * Supplies: ATX 150 × 86 × 140, SFX 125 × 63.5 × 100: design guide 336521 (secondary). SFX-L, 130 long: a public
     * drawing file only, not in the guide (secondary).
     */
    @ParameterizedTest
    @CsvSource({"ATX, 15000, 8600, 14000", "SFX, 12500, 6350, 10000", "SFX_L, 12500, 6350, 13000"})
    void supplies(SupplyForm form, int widthHmm, int heightHmm, int lengthHmm) {
        SupplyFace face = STANDARDS.supplies().stream()
                .filter(s -> s.form() == form)
                .findFirst()
                .orElseThrow();

        assertThat(face.widthMm().valueHmm()).isEqualTo(widthHmm);
        assertThat(face.heightMm().valueHmm()).isEqualTo(heightHmm);
        assertThat(face.lengthMm().valueHmm()).isEqualTo(lengthHmm);
    }

    /**
     * Drives: 2.5 in 69.85 × 100.2, up to 15 high, SFF-8201 (secondary); 3.5 in 101.6 × 147, up to 26.1, SFF-8301
     * (secondary; its length from memory). M.2 2280: 22 × 80, as its name says (seen).
     */
    @ParameterizedTest
    @CsvSource({"D2_5, 6985, 10020, 1500", "D3_5, 10160, 14700, 2610"})
    void drives(DriveForm form, int widthHmm, int lengthHmm, int heightMaxHmm) {
        DriveBody body = drive(form);

        assertThat(body.widthMm().valueHmm()).isEqualTo(widthHmm);
        assertThat(body.lengthMm().valueHmm()).isEqualTo(lengthHmm);
        assertThat(body.heightMaxMm().valueHmm()).isEqualTo(heightMaxHmm);
        assertThat(drive(DriveForm.M2).widthMm().valueHmm()).isEqualTo(2200);
        assertThat(drive(DriveForm.M2).lengthMm().valueHmm()).isEqualTo(8000);
    }

    /** Fan holes. 80 and 120: a public drawing library (seen). 92 and 140: industry drawing, from memory. No standard. */
    @ParameterizedTest
    @CsvSource({"80, 7150, secondary", "92, 8250, from memory", "120, 10500, secondary", "140, 12450, from memory"})
    void fanHolePitches(int sizeMm, int pitchHmm, String confidence) {
        FanPattern fan = fan(sizeMm);

        assertThat(fan.holePitchMm().valueHmm()).isEqualTo(pitchHmm);
        assertThat(fan.source()).contains(confidence);
    }

    /** 180 and 200: makers use 152 to 165 and 154 or 170; the row has to say that there is no standard (from memory). */
    @ParameterizedTest
    @CsvSource({"180, 15200, 16500", "200, 15400, 17000"})
    void largeFansHaveNoStandard(int sizeMm, int leastHmm, int mostHmm) {
        assertThat(fan(sizeMm).holePitchMm().valueHmm()).isBetween(leastHmm, mostHmm);
        assertThat(fan(sizeMm).source()).contains("from memory, no standard");
    }

    /** Clearance holes, ISO 273 fine, medium, coarse; pitch and tap drill, Mechanical Engineer's Data Handbook p. 311 (seen). */
    @ParameterizedTest
    @CsvSource({"M3, 0.5, 3.2, 3.4, 3.6, 2.5", "M4, 0.7, 4.3, 4.5, 4.8, 3.3"})
    void metricThreads(ScrewThread thread, double pitch, double fine, double medium, double coarse, double tap) {
        ThreadRow row = thread(thread);

        assertThat(row.pitchMm()).isEqualTo(pitch);
        assertThat(List.of(row.clearanceFineMm(), row.clearanceMediumMm(), row.clearanceCoarseMm()))
                .containsExactly(fine, medium, coarse);
        assertThat(row.tapDrillMm()).isEqualTo(tap);
        assertThat(row.outsideMm()).isEqualTo(thread == ScrewThread.M3 ? 3 : 4);
    }

    /** 6-32: major 0.1380 in, 32 to the inch; drills 9/64, #27 (0.144 in), #25 (0.1495 in), tap #36 (0.1065 in): drill chart (seen). */
    @Test
    void unifiedThread() {
        ThreadRow row = thread(ScrewThread.UNC_6_32);

        assertThat(row.outsideMm()).isCloseTo(0.1380 * INCH_MM, within(ROUNDED_MM));
        assertThat(row.pitchMm()).isEqualTo(INCH_MM / 32);
        assertThat(row.clearanceFineMm()).isCloseTo(9 * INCH_MM / 64, within(ROUNDED_MM));
        assertThat(row.clearanceMediumMm()).isCloseTo(0.144 * INCH_MM, within(ROUNDED_MM));
        assertThat(row.clearanceCoarseMm()).isCloseTo(0.1495 * INCH_MM, within(ROUNDED_MM));
        assertThat(row.tapDrillMm()).isCloseTo(0.1065 * INCH_MM, within(ROUNDED_MM));
    }

    /** Follows from the numbers above: M3 and 6-32 do not interchange, an M4 does not pass an M3's hole. */
    @Test
    void wrongThreadsDoNotGoIn() {
        ThreadRow m3 = thread(ScrewThread.M3);
        ThreadRow m4 = thread(ScrewThread.M4);
        ThreadRow unified = thread(ScrewThread.UNC_6_32);

        assertThat(unified.outsideMm()).isGreaterThan(m3.clearanceMediumMm());
        assertThat(unified.pitchMm()).isGreaterThan(1.5 * m3.pitchMm());
        assertThat(m4.outsideMm()).isGreaterThan(m3.clearanceCoarseMm());
    }

    @Test
    void everyRowNamesItsSource() {
        assertThat(STANDARDS.boards()).allSatisfy(b -> assertThat(b.source()).isNotBlank());
        assertThat(STANDARDS.supplies()).allSatisfy(s -> assertThat(s.source()).isNotBlank());
        assertThat(STANDARDS.drives()).allSatisfy(d -> assertThat(d.source()).isNotBlank());
        assertThat(STANDARDS.fans()).allSatisfy(f -> assertThat(f.source()).isNotBlank());
        assertThat(STANDARDS.threads()).allSatisfy(t -> assertThat(t.source()).isNotBlank());
    }

    private static BoardOutline board(BoardForm form) {
        return STANDARDS.boards().stream()
                .filter(b -> b.form() == form)
                .findFirst()
                .orElseThrow();
    }

    private static Hole hole(BoardForm form, String id) {
        return board(form).holes().stream()
                .filter(h -> h.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static DriveBody drive(DriveForm form) {
        return STANDARDS.drives().stream()
                .filter(d -> d.form() == form)
                .findFirst()
                .orElseThrow();
    }

    private static FanPattern fan(int sizeMm) {
        return STANDARDS.fans().stream()
                .filter(f -> f.sizeMm() == sizeMm)
                .findFirst()
                .orElseThrow();
    }

    private static ThreadRow thread(ScrewThread thread) {
        return STANDARDS.threads().stream()
                .filter(t -> t.thread() == thread)
                .findFirst()
                .orElseThrow();
    }
}
