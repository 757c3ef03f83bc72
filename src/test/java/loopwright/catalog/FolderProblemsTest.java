package loopwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import loopwright.catalog.read.Problem;
import loopwright.catalog.read.ProblemsException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What can be wrong with files and folders themselves: told as problems, with the other files' problems. */
class FolderProblemsTest {

    /** The problems of a catalogue, with the folder's own name cut off. */
    private static List<String> problems(TinyCatalog tiny) {
        ProblemsException e = catchThrowableOfType(ProblemsException.class, () -> CatalogReader.read(tiny.folder()));
        String root = tiny.file("x").getParent() + "/";
        return e.problems().stream()
                .map(Problem::text)
                .map(t -> t.replace(root, ""))
                .toList();
    }

    @Test
    void aSyntaxErrorHidesNothingElsewhere(@TempDir Path folder) {
        TinyCatalog tiny = TinyCatalog.in(folder)
                .write("catalogs/covers.yaml", "schema: [\n")
                .change("catalogs/drives.yaml", "heat_W: 4", "heat_W: -4");
        assertThat(problems(tiny))
                .containsExactly(
                        "catalogs/covers.yaml:2:1: found a syntax error (expected the node content, but found"
                                + " '<stream end>'), allowed plain YAML",
                        "catalogs/drives.yaml:10:13: drive \"d-1\": heat_W: found -4, allowed 0 to 3000. Is it given"
                                + " in W?");
    }

    @Test
    void refusesBytesThatAreNotUtf8(@TempDir Path folder) throws IOException {
        TinyCatalog tiny = TinyCatalog.in(folder);
        Path file = tiny.file("catalogs/tubes.yaml");
        byte[] bytes = Files.readString(file)
                .replace("title: Tube", "title: T?be")
                .getBytes(java.nio.charset.StandardCharsets.UTF_8);
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] = bytes[i] == '?' ? (byte) 0xFC : bytes[i];
        }
        Files.write(file, bytes);
        assertThat(problems(tiny))
                .containsExactly("catalogs/tubes.yaml:4:23: found the byte 0xFC that is not UTF-8, allowed UTF-8 text."
                        + " Save the file as UTF-8.");
    }

    @Test
    void refusesLargeFiles(@TempDir Path folder) {
        TinyCatalog tiny = TinyCatalog.in(folder).write("catalogs/big.yaml", "#".repeat(4 * 1024 * 1024 + 1));
        assertThat(problems(tiny))
                .containsExactly("catalogs/big.yaml:1:1: found more than 4 MiB, allowed at most 4 MiB a file. Split it"
                        + " into several files.");
    }

    @Test
    void tellsALoopOfLinks(@TempDir Path folder) throws IOException {
        TinyCatalog tiny = TinyCatalog.in(folder);
        Files.createSymbolicLink(tiny.file("catalogs/chassis/again"), tiny.folder());
        assertThat(problems(tiny))
                .containsExactly(
                        "catalogs/chassis/again:1:1: found a link that leads back to a folder above it, allowed"
                                + " files and folders that can be read");
    }

    @Test
    void tellsALinkToNothing(@TempDir Path folder) throws IOException {
        TinyCatalog tiny = TinyCatalog.in(folder);
        Files.createSymbolicLink(tiny.file("catalogs/gone.yaml"), Path.of("nowhere.yaml"));
        assertThat(problems(tiny))
                .containsExactly("catalogs/gone.yaml:1:1: found no such file, allowed a file that can be read");
    }

    @Test
    void tellsWhatIsMissing(@TempDir Path folder) throws IOException {
        TinyCatalog tiny = TinyCatalog.in(folder);
        Files.delete(tiny.file("catalogs/catalog.yaml"));
        Files.delete(tiny.file("shared/practice.yaml"));
        assertThat(problems(tiny))
                .containsExactly(
                        "catalogs/catalog.yaml:1:1: found no catalogue line that can be read, allowed schema:"
                                + " loopwright/catalog/1 with source and currency",
                        "shared/practice.yaml:1:1: found no such file, allowed a file that can be read");
        assertThat(problems(TinyCatalog.in(folder).write("catalogs/more.yml", "")))
                .containsExactly(
                        "catalogs/more.yml:1:1: found the ending .yml, allowed the ending .yaml. Rename the file.");
    }

    @Test
    void refusesKindsThatDoNotBelongThere(@TempDir Path folder) throws IOException {
        TinyCatalog tiny = TinyCatalog.in(folder);
        tiny.write("catalogs/brief.yaml", Files.readString(tiny.file("scenarios/brief.yaml")));
        assertThat(problems(tiny))
                .containsExactly("catalogs/brief.yaml:1:1: schema: found loopwright/brief/1, allowed a kind of part, or"
                        + " loopwright/catalog/1 in catalog.yaml");
    }

    @Test
    void aMissingFolderIsAProblem(@TempDir Path folder) {
        ProblemsException e =
                catchThrowableOfType(ProblemsException.class, () -> CatalogReader.read(folder.resolve("none")));
        assertThat(e.problems().stream().map(Problem::found)).contains("no such folder");
    }
}
