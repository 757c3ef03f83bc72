package loopwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import loopwright.catalog.part.Memory;
import loopwright.catalog.read.Document;
import loopwright.catalog.read.Problem;
import loopwright.catalog.read.Problems;
import loopwright.catalog.read.SourceFile;
import loopwright.quantity.Dimension;
import loopwright.quantity.Distribution;
import loopwright.quantity.Known;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each kind of problem that one file can have, with its literal message. */
class FileProblemsTest {

    private static final String HEAD = "schema: loopwright/memory/1\nsource: invented\nitems:\n";
    private static final String SOUND = """
              - id: k-1
                title: Kit
                buy: {price_cents: 10000, lead_days: 2}
                generation: G5
                height_mm: 34
                modules: 2
                capacity_GB: 32
            """;

    private static List<String> problemsOf(String text) {
        Problems problems = new Problems();
        Document.of(new SourceFile("f.yaml", text), problems);
        return problems.sorted().stream().map(Problem::text).toList();
    }

    private static List<String> with(String from, String to) {
        assertThat(SOUND).contains(from);
        return problemsOf(HEAD + SOUND.replace(from, to));
    }

    @Test
    void saysNothingAboutASoundFile() {
        assertThat(problemsOf(HEAD + SOUND)).isEmpty();
        assertThat(problemsOf("\uFEFF" + HEAD + SOUND)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            34.125 | found 34.125, allowed at most two decimals
            -3     | found -3, allowed 20 to 80. Is it given in mm?
            3000   | found 3000, allowed 20 to 80. Is it given in mm?
            .nan   | found .nan, allowed a finite number
            NaN    | found NaN, allowed a finite number
            -.inf  | found -.inf, allowed a finite number
            "34"   | found the text "34", allowed a number of mm, or unknown. Write it without quotes.
            010    | found 010, allowed a number without a leading zero. Some programs read 010 as octal: write it without the leading zero.
            0x1F   | found the text "0x1F", allowed a number of mm, or unknown. Write it plainly, like 12 or 0.5.
            1e2    | found 1e2, allowed a plain decimal number like 12 or 0.5
            +34    | found the text "+34", allowed a number of mm, or unknown. Write it plainly, like 12 or 0.5.
            .5     | found the text ".5", allowed a number of mm, or unknown. Write it plainly, like 12 or 0.5.
            true   | found true, allowed a number of mm, or unknown
            ~      | found nothing, allowed a number of mm, or unknown
            [1]    | found a list, allowed a number of mm, or unknown
            12345678901234567890123 | found 12345678901234567890123, allowed a plain decimal number like 12 or 0.5
            """)
    void refusesWhatIsNoDimension(String value, String message) {
        assertThat(with("height_mm: 34", "height_mm: " + value))
                .containsExactly("f.yaml:8:16: memory \"k-1\": height_mm: " + message);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            even  | found the text "even", allowed normal, rectangular
            2     | found 2, allowed normal, rectangular
            """)
    void refusesWhatIsNoDistribution(String value, String message) {
        assertThat(with("height_mm: 34", "height_mm: {value_mm: 34, distribution: " + value + "}"))
                .containsExactly("f.yaml:8:45: memory \"k-1\": height_mm.distribution: " + message);
    }

    @Test
    void readsADistribution() {
        assertThat(heightOf("{value_mm: 34, plus_minus_mm: 0.2, distribution: rectangular}"))
                .isEqualTo(new Dimension(3400, 20, Known.DATASHEET, Distribution.RECTANGULAR));
        assertThat(heightOf("{value_mm: 34, distribution: normal}"))
                .isEqualTo(new Dimension(3400, 50, Known.DATASHEET, Distribution.NORMAL));
        assertThat(heightOf("34")).isEqualTo(new Dimension(3400, 50, Known.DATASHEET, Distribution.NORMAL));
    }

    private static Dimension heightOf(String value) {
        String text = HEAD + SOUND.replace("height_mm: 34", "height_mm: " + value);
        return Document.of(new SourceFile("f.yaml", text), new Problems()).orElseThrow().items().stream()
                .flatMap(item -> item.as(Memory.class).stream())
                .findFirst()
                .orElseThrow()
                .heightMm();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            2.0        | found 2.0, allowed a whole number. Write it without a decimal point.
            3000000000 | found 3000000000, allowed 1 to 8
            two        | found the text "two", allowed a whole number
            "2"        | found the text "2", allowed a whole number. Write it without quotes.
            """)
    void refusesWhatIsNoWholeNumber(String value, String message) {
        assertThat(with("modules: 2", "modules: " + value))
                .containsExactly("f.yaml:9:14: memory \"k-1\": modules: " + message);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            heigth_mm: 34  | heigth_mm | Maybe height_mm?
            height_cm: 3.4 | height_cm | Give it in mm as height_mm.
            height_inch: 1 | height_inch | Give it in mm as height_mm.
            height: 34     | height    | Give it in mm as height_mm.
            """)
    void namesTheNearestField(String line, String field, String hint) {
        assertThat(with("height_mm: 34", line))
                .containsExactly("f.yaml:8:5: memory \"k-1\": " + field + ": found an unknown field, allowed id, title,"
                        + " variant_of, buy, generation, height_mm, modules, capacity_GB, mass_g. " + hint);
    }

    @Test
    void tellsAMissingFieldAtItsItem() {
        assertThat(with("    height_mm: 34\n", ""))
                .containsExactly("f.yaml:4:5: memory \"k-1\": height_mm: found nothing, allowed a number of mm, or"
                        + " unknown. The field is missing.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            height_mm: &a 34      | 8:16: found an anchor, allowed plain values without anchors and aliases
            height_mm: &a [1]     | 8:16: found an anchor, allowed plain values without anchors and aliases
            height_mm: *a         | 8:16: found an alias, allowed plain values without anchors and aliases
            height_mm: !!int 34   | 8:16: found a tag, allowed plain values without tags
            height_mm: a: b       | 8:17: found a syntax error (mapping values are not allowed here), allowed plain YAML
            height_mm: "34        | 11:1: found a syntax error (found unexpected end of stream), allowed plain YAML
            """)
    void refusesWhatIsNotPlainYaml(String line, String message) {
        assertThat(with("height_mm: 34", line)).containsExactly("f.yaml:" + message);
    }

    @Test
    void tellsEveryDuplicateKey() {
        assertThat(with("height_mm: 34", "height_mm: 34\n    height_mm: 35\n    modules: 3"))
                .containsExactly(
                        "f.yaml:9:5: height_mm: found the field a second time, allowed each field once. It stands"
                                + " already in line 8.",
                        "f.yaml:11:5: modules: found the field a second time, allowed each field once. It stands"
                                + " already in line 10.");
    }

    @Test
    void refusesASecondDocumentAndAnEmptyFile() {
        assertThat(problemsOf(HEAD + SOUND + "---\na: 1\n"))
                .containsExactly("f.yaml:12:1: found a second document, allowed one document a file");
        assertThat(problemsOf("")).containsExactly("f.yaml:1:1: found an empty file, allowed a map of fields");
    }

    @Test
    void refusesDeepNesting() {
        assertThat(problemsOf("[".repeat(5000)))
                .containsExactly("f.yaml:1:33: found nesting deeper than 32, allowed at most 32 levels");
    }

    @Test
    void refusesTooManyValues() {
        assertThat(problemsOf("- 1\n".repeat(400_000)))
                .containsExactly(
                        "f.yaml:400000:3: found more than 400000 values, allowed at most 400000 values a file");
    }

    @Test
    void namesTheNearestKind() {
        assertThat(problemsOf("schema: loopwright/memori/1\nsource: invented\n"))
                .singleElement()
                .asString()
                .startsWith(
                        "f.yaml:1:9: schema: found the text \"loopwright/memori/1\", allowed loopwright/KIND/1 with")
                .endsWith("Maybe loopwright/memory/1?");
    }

    @Test
    void wantsSchemaSourceAndItems() {
        assertThat(problemsOf("itmes: []\n"))
                .containsExactly(
                        "f.yaml:1:1: schema: found nothing, allowed a line like schema: loopwright/pumps/1",
                        "f.yaml:1:1: source: found nothing, allowed a text that says where the values come from");
        assertThat(problemsOf("schema: loopwright/memory/1\nsource: x\nitmes: []\n"))
                .containsExactly(
                        "f.yaml:1:1: items: found nothing, allowed a list",
                        "f.yaml:3:1: itmes: found an unknown field, allowed schema, source, items. Maybe items?");
    }

    @Test
    void tellsEverythingAtOnce() {
        String text = SOUND.replace("title: Kit", "titel: Kit")
                .replace("price_cents: 10000", "price_cents: -1")
                .replace("height_mm: 34", "height_mm: {plus_minus_mm: -1, known: guessed}")
                .replace("generation: G5", "generation: 5")
                .replace("modules: 2", "modules: two");
        assertThat(problemsOf(HEAD + text + SOUND.replace("id: k-1", "id: k-2").replace("34", ".inf")))
                .containsExactly(
                        "f.yaml:5:5: memory \"k-1\": titel: found an unknown field, allowed id, title, variant_of, buy,"
                                + " generation, height_mm, modules, capacity_GB, mass_g. Maybe title?",
                        "f.yaml:6:24: memory \"k-1\": buy.price_cents: found -1, allowed 0 to 10000000. It is in cents.",
                        "f.yaml:7:17: memory \"k-1\": generation: found 5, allowed a text. Put it in quotes.",
                        "f.yaml:8:17: memory \"k-1\": height_mm.value_mm: found nothing, allowed a number of mm. The"
                                + " field is missing.",
                        "f.yaml:8:32: memory \"k-1\": height_mm.plus_minus_mm: found -1, allowed 0 to 50",
                        "f.yaml:8:43: memory \"k-1\": height_mm.known: found the text \"guessed\", allowed measured,"
                                + " datasheet, assumed",
                        "f.yaml:9:14: memory \"k-1\": modules: found the text \"two\", allowed a whole number",
                        "f.yaml:15:16: memory \"k-2\": height_mm: found .inf, allowed a finite number");
    }

    @Test
    void keepsAProblemOnOneLine() {
        assertThat(with("id: k-1", "id: \"a\\nb\\e[31m\\u202e\"").stream().noneMatch(t -> t.contains("\n")))
                .isTrue();
        assertThat(with("modules: 2", "modules: \"a\\nb\\e\\u202ec\""))
                .containsExactly(
                        "f.yaml:9:14: memory \"k-1\": modules: found the text \"a b c\", allowed a whole number");
    }
}
