package loopwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import loopwright.catalog.read.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FileCheckTest {

    private static List<String> check(TinyCatalog tiny, Path... paths) {
        String root = tiny.file("x").getParent() + "/";
        return FileCheck.check(List.of(paths), tiny.folder()).stream()
                .map(Problem::text)
                .map(t -> t.replace(root, ""))
                .toList();
    }

    @Test
    void takesFilesAndFoldersOfEveryKind(@TempDir Path folder) {
        TinyCatalog tiny = TinyCatalog.in(folder);
        assertThat(check(tiny)).isEmpty();
        assertThat(check(tiny, tiny.file("scenarios"), tiny.folder(), tiny.file("shared")))
                .isEmpty();
        assertThat(check(tiny, tiny.file("scenarios/brief.yaml"), tiny.file("catalogs/fans.yaml")))
                .isEmpty();
    }

    @Test
    void aFileOutsideJoinsTheCatalogue(@TempDir Path folder) throws IOException {
        TinyCatalog tiny = TinyCatalog.in(folder);
        String tubes = Files.readString(tiny.file("catalogs/tubes.yaml"));
        tiny.write("new/tubes.yaml", tubes.replace("h-1", "h-2"));
        assertThat(check(tiny, tiny.file("new/tubes.yaml"))).isEmpty();
        tiny.write("new/tubes.yaml", tubes);
        assertThat(check(tiny, tiny.file("new/tubes.yaml")))
                .singleElement()
                .asString()
                .contains("tube \"h-1\": id: found \"h-1\" a second time");
    }

    @Test
    void aBriefWithFaultsDoesNotHideTheNextOnes(@TempDir Path folder) throws IOException {
        TinyCatalog tiny = TinyCatalog.in(folder);
        String brief = Files.readString(tiny.file("scenarios/brief.yaml"));
        tiny.write("scenarios/a.yaml", brief.replace("tube_m: 2", "tube_m: two"));
        tiny.write("scenarios/b.yaml", brief.replace("drives: [d-1]", "drives: [d-9]"));
        assertThat(check(tiny, tiny.file("scenarios")))
                .containsExactly(
                        "scenarios/a.yaml:16:11: brief \"brief-1\": loop.tube_m: found the text \"two\", allowed a number",
                        "scenarios/b.yaml:11:12: brief \"brief-1\": parts.drives[0]: found \"d-9\", allowed the id of a"
                                + " drive of the catalogue. Maybe d-1?");
    }

    @Test
    void tellsAFileThatIsNotThere(@TempDir Path folder) {
        TinyCatalog tiny = TinyCatalog.in(folder);
        assertThat(check(tiny, tiny.file("scenarios/none.yaml")))
                .containsExactly("scenarios/none.yaml:1:1: found no such file, allowed a file that can be read");
    }

    @Test
    void versionFollowsTheBytes(@TempDir Path folder) {
        TinyCatalog tiny = TinyCatalog.in(folder);
        String before = CatalogReader.read(tiny.folder()).version();
        tiny.change("shared/practice.yaml", "fan_need_mm: 2", "fan_need_mm: 2.5");
        assertThat(CatalogReader.read(tiny.folder()).version()).isNotEqualTo(before);
    }
}
