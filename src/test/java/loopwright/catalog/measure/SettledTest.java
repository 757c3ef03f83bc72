package loopwright.catalog.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import loopwright.catalog.read.Range;
import loopwright.quantity.Dimension;
import loopwright.quantity.Known;
import org.junit.jupiter.api.Test;

/** Which of several readings holds, by hand. */
class SettledTest {

    private static final Dimension SHEET = new Dimension(43400, 50, Known.DATASHEET);

    private static Taken taken(Dimension was, String mm, String plusMinusMm, String date) {
        Length length = new Length("tower", "height_mm", was, new Range(50, 900, ""));
        return new Taken(
                length, hmm(mm), hmm(plusMinusMm), "rods", LocalDate.parse(date), "r.yaml:" + date.substring(8));
    }

    private static int hmm(String mm) {
        return new BigDecimal(mm).movePointRight(2).intValueExact();
    }

    @Test
    void aReadingBeatsADataSheetHoweverRoughItIs() {
        Settled settled = Settled.of(List.of(taken(SHEET, "433.1", "1", "2026-03-09")));
        assertThat(settled.used())
                .containsExactly(new Replacement(
                        "tower",
                        "height_mm",
                        SHEET,
                        new Dimension(43310, 100, Known.MEASURED),
                        "the reading at r.yaml:09 (rods, 2026-03-09)"));
        assertThat(settled.contradictions()).isEmpty();
        assertThat(settled.notes()).isEmpty();
    }

    @Test
    void aReadingMakesTheUnknownKnown() {
        assertThat(Settled.of(List.of(taken(Dimension.UNKNOWN, "12.34", "0.05", "2026-03-09")))
                        .used())
                .singleElement()
                .satisfies(r -> assertThat(r.to()).isEqualTo(new Dimension(1234, 5, Known.MEASURED)));
    }

    @Test
    void ofReadingsThatAgreeTheSurestHolds() {
        Settled settled = Settled.of(List.of(
                taken(SHEET, "433.5", "0.5", "2026-03-11"),
                taken(SHEET, "433.1", "0.15", "2026-03-09"),
                taken(SHEET, "433.0", "1", "2026-03-12")));
        assertThat(settled.used())
                .singleElement()
                .satisfies(r -> assertThat(r.to().valueHmm()).isEqualTo(43310));
    }

    @Test
    void ofEquallySureOnesTheLaterHolds() {
        Settled settled = Settled.of(List.of(
                taken(SHEET, "433.1", "0.15", "2026-03-09"),
                taken(SHEET, "433.2", "0.15", "2026-03-11"),
                taken(SHEET, "433.0", "0.15", "2026-03-10")));
        assertThat(settled.used())
                .singleElement()
                .satisfies(r -> assertThat(r.to().valueHmm()).isEqualTo(43320));
    }

    @Test
    void exactlyTheSumOfBothIsStillAgreement() {
        assertThat(Settled.of(List.of(
                                taken(SHEET, "433.00", "0.15", "2026-03-09"),
                                taken(SHEET, "433.65", "0.5", "2026-03-11")))
                        .contradictions())
                .isEmpty();
    }

    @Test
    void readingsThatContradictAreSaidAndNotUsed() {
        Settled settled = Settled.of(
                List.of(taken(SHEET, "433.66", "0.5", "2026-03-11"), taken(SHEET, "433.00", "0.15", "2026-03-09")));
        assertThat(settled.used()).isEmpty();
        assertThat(settled.contradictions())
                .singleElement()
                .satisfies(c -> assertThat(c.sentence())
                        .isEqualTo(
                                "tower.height_mm was read as 433.0 +-0.15 mm (rods, 2026-03-09) and as 433.66 +-0.5 mm"
                                        + " (rods, 2026-03-11): they differ by 0.66 mm, more than their +- together (0.65 mm)."
                                        + " Neither is used, the catalogue's 434.0 mm stays: measure again."));
    }

    @Test
    void oneStrayReadingSpoilsThemAllAndTheWorstPairIsSaid() {
        Settled settled = Settled.of(List.of(
                taken(Dimension.UNKNOWN, "433.0", "0.15", "2026-03-09"),
                taken(Dimension.UNKNOWN, "433.1", "0.15", "2026-03-10"),
                taken(Dimension.UNKNOWN, "434.0", "0.15", "2026-03-11")));
        assertThat(settled.used()).isEmpty();
        assertThat(settled.contradictions())
                .singleElement()
                .satisfies(c -> assertThat(c.sentence())
                        .contains("433.0 +-0.15", "434.0 +-0.15", "differ by 1.0 mm", "it stays unknown"));
    }

    @Test
    void theCataloguesSurerMeasurementStays() {
        Dimension measured = new Dimension(43400, 10, Known.MEASURED);
        Settled settled = Settled.of(List.of(taken(measured, "434.3", "0.5", "2026-03-09")));
        assertThat(settled.used()).isEmpty();
        assertThat(settled.notes())
                .containsExactly("tower.height_mm: the reading 434.3 +-0.5 mm (rods, 2026-03-09) agrees with the"
                        + " catalogue's measured 434.0 +-0.1 mm, which is surer and stays.");
    }

    @Test
    void anEquallySureReadingBeatsTheCataloguesMeasurement() {
        Dimension measured = new Dimension(43400, 15, Known.MEASURED);
        Settled settled = Settled.of(List.of(taken(measured, "434.3", "0.15", "2026-03-09")));
        assertThat(settled.used()).hasSize(1);
        assertThat(settled.notes()).isEmpty();
    }

    @Test
    void aReadingThatContradictsTheCataloguesMeasurementIsUsedAndSaid() {
        Dimension measured = new Dimension(43400, 10, Known.MEASURED);
        Settled settled = Settled.of(List.of(taken(measured, "435", "0.5", "2026-03-09")));
        assertThat(settled.used()).hasSize(1);
        assertThat(settled.notes())
                .containsExactly(
                        "tower.height_mm: the reading 435.0 +-0.5 mm (rods, 2026-03-09) is used, but contradicts"
                                + " the catalogue's measured 434.0 +-0.1 mm: measure again.");
    }
}
