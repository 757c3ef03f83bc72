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
import loopwright.paper.Manifest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A set of papers is written whole or not at all, and nothing of the user's is lost. */
class OutFolderTest {

    private static SortedMap<String, byte[]> set(String text, String... names) {
        SortedMap<String, byte[]> out = new TreeMap<>();
        for (String name : names.length == 0 ? new String[] {"a.txt", "b.txt", "c.txt"} : names) {
            out.put(name, (name + text).getBytes(StandardCharsets.UTF_8));
        }
        out.put(Manifest.NAME, Manifest.of(out).bytes());
        return out;
    }

    /** Everything in a folder, hidden or not, by name. */
    private static Map<String, String> content(Path folder) throws IOException {
        Map<String, String> out = new TreeMap<>();
        for (String name : PaperSwap.names(folder)) {
            out.put(name, Files.readString(folder.resolve(name)));
        }
        return out;
    }

    private static Map<String, String> texts(SortedMap<String, byte[]> set) {
        Map<String, String> out = new TreeMap<>();
        set.forEach((name, bytes) -> out.put(name, new String(bytes, StandardCharsets.UTF_8)));
        return out;
    }

    @Test
    void writesIntoAFolderThatIsNotThere(@TempDir Path root) throws IOException {
        Path folder = root.resolve("papers");
        OutFolder out = new OutFolder(folder);
        out.requireUsable();
        assertThat(out.taken(set("").keySet())).isEmpty();
        out.write(set(" one"));
        assertThat(content(folder)).isEqualTo(texts(set(" one")));
        assertThat(out.taken(set("").keySet())).containsExactly("a.txt", "b.txt", "c.txt", Manifest.NAME);
    }

    @Test
    void leavesOtherFilesAlone(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("mine.txt"), "mine");
        new OutFolder(folder).write(set(" one"));
        new OutFolder(folder).write(set(" two"));
        Map<String, String> expected = texts(set(" two"));
        expected.put("mine.txt", "mine");
        assertThat(content(folder)).isEqualTo(expected);
    }

    @Test
    void takesAwayWhatTheSetBeforeLeft(@TempDir Path folder) throws IOException {
        new OutFolder(folder).write(set(" old", "a.txt", "template-left.svg", "templates-a3.pdf"));

        assertThat(new OutFolder(folder).write(set(" new", "a.txt", "templates-a4.pdf")))
                .isEmpty();
        assertThat(content(folder)).isEqualTo(texts(set(" new", "a.txt", "templates-a4.pdf")));
    }

    @Test
    void keepsAndNamesWhatWasChangedAndTemplatesOfOthers(@TempDir Path folder) throws IOException {
        new OutFolder(folder).write(set(" old", "a.txt", "template-left.svg", "notes.csv"));
        Files.writeString(folder.resolve("notes.csv"), "mine now");
        Files.writeString(folder.resolve("template-roof.dxf"), "from elsewhere");

        assertThat(new OutFolder(folder).write(set(" new", "a.txt"))).containsExactly("notes.csv", "template-roof.dxf");
        assertThat(content(folder))
                .containsOnlyKeys("a.txt", "notes.csv", Manifest.NAME, "template-roof.dxf")
                .containsEntry("notes.csv", "mine now")
                .containsEntry("template-roof.dxf", "from elsewhere");
    }

    @Test
    void aListThatLeadsElsewhereRemovesNothingThere(@TempDir Path root) throws IOException {
        Path folder = Files.createDirectory(root.resolve("papers"));
        Path outside = Files.writeString(root.resolve("outside.svg"), "abc");
        String sum = Manifest.sum("abc".getBytes(StandardCharsets.UTF_8));
        Files.writeString(folder.resolve(Manifest.NAME), sum + "  ../outside.svg\n" + sum + "  in.svg\n");
        Files.createSymbolicLink(folder.resolve("in.svg"), outside);

        assertThat(new OutFolder(folder).write(set(" new"))).containsExactly("in.svg");
        assertThat(outside).hasContent("abc");
        assertThat(folder.resolve("in.svg")).isSymbolicLink();
    }

    @Test
    void aSetThatFailsLeavesTheOldOneWhole(@TempDir Path folder) throws IOException {
        new OutFolder(folder).write(set(" old"));
        SortedMap<String, byte[]> broken = set(" new");
        broken.put("d/e.txt", new byte[0]); // there is no folder d to write into
        assertThatThrownBy(() -> new OutFolder(folder).write(broken)).isInstanceOf(IOException.class);
        assertThat(content(folder)).isEqualTo(texts(set(" old")));
    }

    @Test
    void aMoveThatFailsPutsTheOthersBack(@TempDir Path folder) throws IOException {
        new OutFolder(folder).write(set(" old"));
        OutFolder failing = new OutFolder(folder, (from, to) -> {
            if (from.endsWith(".papers-new/c.txt")) {
                throw new IOException("no room");
            }
            PaperSwap.PLAIN.move(from, to);
        });
        assertThatThrownBy(() -> failing.write(set(" new"))).isInstanceOf(IOException.class);
        assertThat(content(folder)).isEqualTo(texts(set(" old")));
    }

    /** A process that is gone: it catches nothing and cleans nothing up. */
    private static final class Gone extends Error {
        private static final long serialVersionUID = 1;
    }

    /** Moves that many times, then the process is gone. */
    private static PaperSwap.Mover goneAfter(int moves) {
        int[] done = {0};
        return (from, to) -> {
            if (done[0]++ == moves) {
                throw new Gone();
            }
            PaperSwap.PLAIN.move(from, to);
        };
    }

    @Test
    void theNextRunPutsBackWhatAStoppedOneMoved(@TempDir Path root) throws IOException {
        SortedMap<String, byte[]> old = set(" old", "a.txt", "b.txt", "same.txt", "template-left.svg");
        SortedMap<String, byte[]> fresh = set(" new", "b.txt", "c.txt", "same.txt");
        old.put("same.txt", fresh.get("same.txt")); // not told apart by what is in it
        old.put(Manifest.NAME, Manifest.of(old).bytes());
        int stops = 0;
        boolean finished = false;
        while (!finished) {
            Path folder = root.resolve("papers-" + stops);
            new OutFolder(folder).write(old);
            finished = writes(new OutFolder(folder, goneAfter(stops)), fresh);
            if (!finished) {
                undoneTwice(folder);
                assertThat(content(folder)).as("stopped after %s moves", stops).isEqualTo(texts(old));
                stops++;
            } else {
                assertThat(content(folder)).isEqualTo(texts(fresh));
            }
        }
        assertThat(stops).as("moves of a swap: 2 away, 3 old aside, 4 new in").isEqualTo(9);
    }

    private static boolean writes(OutFolder folder, SortedMap<String, byte[]> set) throws IOException {
        try {
            folder.write(set);
            return true;
        } catch (Gone e) {
            return false;
        }
    }

    /** Puts back, stopped in turn after every one of its own moves. */
    private static void undoneTwice(Path folder) throws IOException {
        boolean undone = false;
        for (int moves = 0; !undone; moves++) {
            try {
                assertThat(new OutFolder(folder, goneAfter(moves)).putBack()).isTrue();
                undone = true;
            } catch (Gone e) {
                assertThat(folder.resolve(".papers-new").resolve(Manifest.NAME)).exists();
            }
        }
        assertThat(new OutFolder(folder).putBack()).isFalse();
    }

    @Test
    void whatWasChangedAfterAStopIsNotMoved(@TempDir Path folder) throws IOException {
        new OutFolder(folder).write(set(" old"));
        assertThat(writes(new OutFolder(folder, goneAfter(4)), set(" new"))).isFalse();
        Files.writeString(folder.resolve("a.txt"), "mine");
        Map<String, String> hidden = content(folder.resolve(".papers-old"));

        assertThatThrownBy(() -> new OutFolder(folder).putBack())
                .isInstanceOf(OutRefused.class)
                .hasMessageContaining("a.txt was changed since: move it elsewhere");
        assertThat(folder.resolve("a.txt")).hasContent("mine");
        assertThat(content(folder.resolve(".papers-old"))).isEqualTo(hidden);
        Files.delete(folder.resolve("a.txt"));
        assertThat(new OutFolder(folder).putBack()).isTrue();
        assertThat(content(folder)).isEqualTo(texts(set(" old")));
    }

    @Test
    void onlyOneRunWritesAtATime(@TempDir Path folder) throws IOException {
        OutFolder outer = new OutFolder(folder, (from, to) -> {
            assertThatThrownBy(() -> new OutFolder(folder).putBack())
                    .isInstanceOf(OutRefused.class)
                    .hasMessageContaining("another run is writing into");
            PaperSwap.PLAIN.move(from, to);
        });
        outer.write(set(" one"));
        assertThat(content(folder)).isEqualTo(texts(set(" one")));
    }

    @Test
    void anythingButAFileOfThatNameIsRefusedUntouched(@TempDir Path root) throws IOException {
        Path folder = Files.createDirectory(root.resolve("papers"));
        Path inside = Files.createDirectories(folder.resolve("a.txt/inside"));
        refuses(folder, "a.txt in " + folder + " is a folder");
        assertThat(inside).isDirectory();

        Path linked = Files.createDirectory(root.resolve("linked"));
        Path link = Files.createSymbolicLink(linked.resolve("b.txt"), root.resolve("nowhere.txt"));
        assertThat(new OutFolder(linked).taken(set("").keySet())).containsExactly("b.txt");
        refuses(linked, "b.txt in " + linked + " is a link");
        assertThat(link).isSymbolicLink();
        assertThat(root.resolve("nowhere.txt")).doesNotExist();
    }

    private static void refuses(Path folder, String why) throws IOException {
        List<String> before = PaperSwap.names(folder);
        assertThatThrownBy(() -> new OutFolder(folder).write(set(" new")))
                .isInstanceOf(OutRefused.class)
                .hasMessage(why + ", and a paper has that name: move it, or name another folder");
        assertThat(PaperSwap.names(folder)).isEqualTo(before);
    }

    @Test
    void whatIsNoFolderIsRefusedInWords(@TempDir Path root) throws IOException {
        Path file = Files.writeString(root.resolve("f"), "");
        unusable(file, file + " is a file, not a folder: name a folder");
        unusable(file.resolve("papers"), file + " is a file, not a folder: name a folder");
        Path link = Files.createSymbolicLink(root.resolve("link"), root.resolve("nowhere"));
        unusable(link, link + " is a link that leads nowhere: name a folder");
        Path deep = root.resolve("deep/er");
        unusable(
                deep,
                "the folder " + root.resolve("deep") + ", which " + deep
                        + " would be made in, is not there: make it first, or name another");
    }

    private static void unusable(Path folder, String why) {
        assertThatThrownBy(() -> new OutFolder(folder).requireUsable())
                .isInstanceOf(OutRefused.class)
                .hasMessage(why);
    }

    @Test
    void reasonsNameNoFileOfOurs() {
        Path out = Path.of("papers");
        Path ours = out.resolve(".papers-new");
        assertThat(OutRefused.reason(new java.nio.file.AccessDeniedException(ours.toString()), out))
                .isEqualTo("no right to write in papers: name another folder");
        assertThat(OutRefused.reason(
                        new java.nio.file.FileSystemException(ours.toString(), null, "No space left on device"), out))
                .isEqualTo("papers: No space left on device");
    }
}
