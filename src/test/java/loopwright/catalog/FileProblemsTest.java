package loopwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import loopwright.catalog.read.Document;
import loopwright.catalog.read.Problem;
import loopwright.catalog.read.Problems;
import loopwright.catalog.read.SourceFile;
import org.junit.jupiter.api.Test;

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

    static List<String> problemsOf(String text) {
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
    }

    @Test
    void x() {
        for (var s : List.of(
                "height_mm: \"\"",
                "height_mm: # a",
                "height_mm: !x 3",
                "&k height_mm: 34",
                "height_mm: &a [1]",
                "height_mm: &a {value_mm: 34}",
                "height_mm: \"&a\"",
                "height_mm: &a\n      value_mm: 34",
                "height_mm: 34.125",
                "height_mm: -3",
                "height_mm: 3000",
                "height_mm: .nan",
                "height_mm: .inf",
                "height_mm: NaN",
                "height_mm: -.inf",
                "height_mm: \"34\"",
                "height_mm: 034",
                "height_mm: 010",
                "height_mm: 0x1F",
                "height_mm: 0o17",
                "height_mm: 1e2",
                "height_mm: +34",
                "height_mm: 3_4",
                "height_mm: .5",
                "height_mm: yes",
                "height_mm: true",
                "height_mm:",
                "height_mm: ~",
                "height_mm: [1]",
                "height_mm: {value_mm: 34, plus_minus: 3}",
                "height_mm: {plus_minus_mm: -1, known: guessed}",
                "height_cm: 3.4",
                "heigth_mm: 34",
                "height: 34",
                "foo: 3",
                "",
                "height_mm: &a 34",
                "height_mm: !!int 34",
                "height_mm: *a",
                "height_mm: 34\n    height_mm: 35",
                "height_mm: 34\n  x: 3",
                "height_mm: [1, 2",
                "height_mm: \"34",
                "height_mm: a: b",
                "height_mm: 34\n---\nfoo: 1",
                "height_mm: 12345678901234567890123",
                "\theight_mm: 34",
                "height_mm: 99999999999",
                "<<: 3",
                "? [a]\n    : 3",
                "height_mm: 34\n    5: x",
                "height_mm: 34\n    \"a\\nb\\u202e\": x")) System.out.println(s + "  =>  " + with("height_mm: 34", s));
        for (var s : List.of("modules: 2.0", "modules: 3000000000", "modules: two", "modules: \"2\"", "modules: 1.5"))
            System.out.println(s + "  =>  " + with("modules: 2", s));
        for (var s : List.of("id: 5", "id: true", "id: ", "id: \"\""))
            System.out.println(s + "  =>  " + with("id: k-1", s));
        for (var s : List.of(
                "",
                "---",
                "a",
                "- a",
                "schema: 5",
                "schema: loopwright/memori/1",
                "schema: loopwright/memory/2\nsource: x",
                "schema: loopwright/memory/1",
                "schema: loopwright/memory/1\nsource: x\nitems: {}",
                "schema: loopwright/memory/1\nsource: x\nitems: [5]\nitmes: []",
                "[".repeat(40),
                "{a: ".repeat(40),
                "schema: loopwright/memory/1\nsource: x\nitems: []\nitems: []",
                "%YAML 1.1\n---\na: 1",
                "a: 1\n...\nb: 2",
                "# only")) System.out.println(s + "  =>  " + problemsOf(s));
    }
}
