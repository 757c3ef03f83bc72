package loopwright.catalog.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.FileCheck;
import loopwright.catalog.TinyCatalog;
import loopwright.catalog.read.Problem;
import loopwright.catalog.read.ProblemsException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReadingsFileTest {

    private static final String HEAD = "schema: loopwright/readings/1\nsource: invented\nitems:\n";
    private static final String SOUND =
            "  - {of: r-140, dimension: body.thickness_mm, value_mm: 30.4, instrument: rule, date: 2026-03-09}\n";

    private static List<Taken> read(TinyCatalog tiny, String text) {
        tiny.write("readings.yaml", text);
        Catalog catalog = CatalogReader.read(tiny.folder());
        return CatalogReader.readReadings(List.of(tiny.file("readings.yaml")), catalog);
    }

    private static List<String> problems(Path folder, String items) {
        TinyCatalog tiny = TinyCatalog.in(folder);
        ProblemsException e = catchThrowableOfType(ProblemsException.class, () -> read(tiny, HEAD + items));
        List<String> told = texts(tiny, e.problems());
        assertThat(texts(tiny, FileCheck.check(List.of(tiny.file("readings.yaml")), tiny.folder())))
                .isEqualTo(told);
        return told;
    }

    private static List<String> texts(TinyCatalog tiny, List<Problem> problems) {
        String root = tiny.file("x").getParent() + "/";
        return problems.stream().map(p -> p.text().replace(root, "")).toList();
    }

    @Test
    void takesTheInstrumentsPlusMinusWhereNoneIsGiven(@TempDir Path folder) {
        List<Taken> taken = read(
                TinyCatalog.in(folder),
                HEAD
                        + SOUND
                        + "  - {of: cube, dimension: shell.interior.height_mm, value_mm: 299.25, instrument: rods,"
                        + " plus_minus_mm: 0.2, date: \"2026-03-10\", where: at the rear, who: the builder}\n");
        assertThat(taken).hasSize(2);
        assertThat(taken.get(0).length().address()).isEqualTo("r-140.body.thickness_mm");
        assertThat(taken.get(0).valueHmm()).isEqualTo(3040);
        assertThat(taken.get(0).plusMinusHmm()).isEqualTo(50);
        assertThat(taken.get(0).date()).isEqualTo(LocalDate.of(2026, 3, 9));
        assertThat(taken.get(0).place()).endsWith("readings.yaml:4");
        assertThat(taken.get(1).plusMinusHmm()).isEqualTo(20);
    }

    @Test
    void tellsEveryMistakeAtOnce(@TempDir Path folder) {
        assertThat(problems(
                        folder,
                        SOUND.replace("r-140", "r-14")
                                + SOUND.replace("thickness", "thicknes")
                                + SOUND.replace("body.thickness_mm", "thickness")
                                + SOUND.replace("body.thickness_mm", "core.depth_mm")
                                + SOUND.replace("30.4", "304")
                                + SOUND.replace("30.4", "30.455")
                                + SOUND.replace("rule", "rul")
                                + SOUND.replace("2026-03-09", "09.03.2026")
                                + SOUND.replace("2026-03-09", "2026-02-30")
                                + SOUND.replace("of: r-140", "of: q").replace("rule", "laser")))
                .containsExactly(
                        "readings.yaml:4:10: reading number 1: of: found \"r-14\", allowed the id of a part or a chassis of"
                                + " the catalogue, practice or standards. Maybe r-140?",
                        "readings.yaml:5:28: reading number 2: dimension: found \"body.thicknes_mm\", allowed the path of a"
                                + " length of r-140. Maybe body.thickness_mm?",
                        "readings.yaml:6:28: reading number 3: dimension: found \"thickness\", allowed the path of a length"
                                + " of r-140. Maybe body.thickness_mm?",
                        "readings.yaml:7:28: reading number 4: dimension: found \"core.depth_mm\", which is no length with a"
                                + " +-, allowed the path of a length of r-140",
                        "readings.yaml:8:57: reading number 5: value_mm: found 304, allowed 10 to 120 for"
                                + " r-140.body.thickness_mm. Is it given in mm?",
                        "readings.yaml:9:57: reading number 6: value_mm: found 30.455, allowed at most two decimals",
                        "readings.yaml:10:75: reading number 7: instrument: found \"rul\", allowed an instrument of the"
                                + " practice: rule, rods. Maybe rule?",
                        "readings.yaml:11:87: reading number 8: date: found \"09.03.2026\", allowed a date like 2026-03-09",
                        "readings.yaml:12:87: reading number 9: date: found \"2026-02-30\", allowed a date like 2026-03-09",
                        "readings.yaml:13:10: reading number 10: of: found \"q\", allowed the id of a part or a chassis of"
                                + " the catalogue, practice or standards",
                        "readings.yaml:13:71: reading number 10: instrument: found \"laser\", allowed an instrument of the"
                                + " practice: rule, rods");
    }

    @Test
    void refusesWhatTheFileItselfMayNotHold(@TempDir Path folder) {
        assertThat(problems(folder, SOUND.replace("date: ", "taken: ") + SOUND.replace("30.4", "thick")))
                .containsExactly(
                        "readings.yaml:4:6: reading number 1: date: found nothing, allowed a text. The field is missing.",
                        "readings.yaml:4:81: reading number 1: taken: found an unknown field, allowed of, dimension, value_mm,"
                                + " instrument, plus_minus_mm, date, where, who",
                        "readings.yaml:5:57: reading number 2: value_mm: found the text \"thick\", allowed a number");
    }

    @Test
    void refusesAFileOfAnotherKind(@TempDir Path folder) {
        TinyCatalog tiny = TinyCatalog.in(folder);
        Catalog catalog = CatalogReader.read(tiny.folder());
        ProblemsException e = catchThrowableOfType(
                ProblemsException.class,
                () -> CatalogReader.readReadings(List.of(tiny.file("scenarios/brief.yaml")), catalog));
        assertThat(texts(tiny, e.problems()))
                .containsExactly("scenarios/brief.yaml:1:1: schema: found loopwright/brief/1, allowed"
                        + " loopwright/readings/1. This file holds no readings.");
    }

    @Test
    void readingsAreNoPartOfACatalogue(@TempDir Path folder) {
        TinyCatalog tiny = TinyCatalog.in(folder).write("catalogs/readings.yaml", HEAD + SOUND);
        ProblemsException e = catchThrowableOfType(ProblemsException.class, () -> CatalogReader.read(tiny.folder()));
        assertThat(texts(tiny, e.problems()))
                .containsExactly(
                        "catalogs/readings.yaml:1:1: schema: found loopwright/readings/1, allowed a kind of part,"
                                + " or loopwright/catalog/1 in catalog.yaml. Readings lie outside the catalogue: name them with"
                                + " --readings.");
    }

    @Test
    void checkTakesSoundReadings(@TempDir Path folder) {
        TinyCatalog tiny = TinyCatalog.in(folder).write("readings.yaml", HEAD + SOUND);
        assertThat(FileCheck.check(List.of(tiny.file("readings.yaml")), tiny.folder()))
                .isEmpty();
    }

    @Test
    void instrumentsAreNamedOnce(@TempDir Path folder) {
        TinyCatalog tiny = TinyCatalog.in(folder).change("shared/practice.yaml", "{id: rods", "{id: rule");
        ProblemsException e = catchThrowableOfType(ProblemsException.class, () -> CatalogReader.read(tiny.folder()));
        assertThat(texts(tiny, e.problems()))
                .containsExactly(
                        "shared/practice.yaml:31:12: practice: measuring.instruments[1].id: found \"rule\" a second"
                                + " time, allowed an id that no other instrument has");
    }
}
