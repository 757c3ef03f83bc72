package loopwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A set of papers is written whole or not at all, and nothing of the user's is lost. */
class OutFolderTest {

    private static SortedMap<String, byte[]> set(String text) {
        SortedMap<String, byte[]> out = new TreeMap<>();
        for (String name : List.of("a.txt", "b.txt", "c.txt")) {
            out.put(name, (name + text).getBytes(StandardCharsets.UTF_8));
        }
        return out;
    }

    @Test
    void writesIntoAFolderThatIsNotThere(@TempDir Path root) throws IOException {
        Path folder = root.resolve("deep/er");
        OutFolder out = new OutFolder(folder);
        assertThat(out.taken(set("").keySet())).isEmpty();
        out.write(set(" one"));
        assertThat(folder.resolve("b.txt")).hasContent("b.txt one");
        assertThat(names(folder)).containsExactlyInAnyOrder("a.txt", "b.txt", "c.txt");
        assertThat(out.taken(set("").keySet())).containsExactly("a.txt", "b.txt", "c.txt");
    }

    @Test
    void leavesOtherFilesAlone(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("mine.txt"), "mine");
        new OutFolder(folder).write(set(" one"));
        new OutFolder(folder).write(set(" two"));
        assertThat(folder.resolve("mine.txt")).hasContent("mine");
        assertThat(folder.resolve("c.txt")).hasContent("c.txt two");
        assertThat(names(folder)).hasSize(4);
    }

    @Test
    void aSetThatFailsLeavesTheOldOneWhole(@TempDir Path folder) throws IOException {
        new OutFolder(folder).write(set(" old"));
        SortedMap<String, byte[]> broken = set(" new");
        broken.put("d/e.txt", new byte[0]); // there is no folder d to write into
        assertThatThrownBy(() -> new OutFolder(folder).write(broken)).isInstanceOf(IOException.class);
        for (Map.Entry<String, byte[]> each : set(" old").entrySet()) {
            assertThat(folder.resolve(each.getKey())).hasBinaryContent(each.getValue());
        }
        assertThat(names(folder)).containsExactlyInAnyOrder("a.txt", "b.txt", "c.txt");
    }

    @Test
    void aFileThatCannotGiveWayPutsTheOthersBack(@TempDir Path folder) throws IOException {
        new OutFolder(folder).write(set(" old"));
        Files.delete(folder.resolve("c.txt"));
        Files.createDirectories(
                folder.resolve("c.txt/inside")); // a folder of that name, not empty, in the way of a file
        SortedMap<String, byte[]> more = set(" new");
        more.put("c.txt/inside", new byte[0]);
        assertThatThrownBy(() -> new OutFolder(folder).write(more)).isInstanceOf(IOException.class);
        assertThat(folder.resolve("a.txt")).hasContent("a.txt old");
        assertThat(folder.resolve("b.txt")).hasContent("b.txt old");
        assertThat(folder.resolve("c.txt/inside")).isDirectory();
    }

    private static List<String> names(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(f -> String.valueOf(f.getFileName())).toList();
        }
    }
}
