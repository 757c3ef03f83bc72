package loopwright.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a set of papers consists of, as a list that common tools check. */
class ManifestTest {

    /** SHA-256 of "abc": the example of FIPS 180-4, published by NIST with the standard. */
    private static final String ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String text(Manifest manifest) {
        return new String(manifest.bytes(), StandardCharsets.UTF_8);
    }

    @Test
    void hasALineAFileAndNotItself() {
        Manifest made = Manifest.of(Map.of("b.svg", bytes("abc"), "a.pdf", bytes("abc"), Manifest.NAME, bytes("old")));

        assertThat(text(made)).isEqualTo(ABC + "  a.pdf\n" + ABC + "  b.svg\n");
        assertThat(Manifest.read(text(made))).isEqualTo(made);
        assertThat(made.lists("a.pdf", bytes("abc"))).isTrue();
        assertThat(made.lists("a.pdf", bytes("abd"))).isFalse();
        assertThat(made.lists("c.pdf", bytes("abc"))).isFalse();
    }

    @Test
    void linesThatLeadElsewhereAreNotOurs() {
        String foreign = ABC + "  ../evil.svg\n" + ABC + "  /etc/x.svg\n" + ABC + " *a.svg\n" + ABC + "  .hidden\n"
                + "hello\n" + ABC + "  good.svg\n";

        assertThat(Manifest.read(foreign).sums()).containsOnlyKeys("good.svg");
    }

    @Test
    void theCommonToolChecksIt(@TempDir Path folder) throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/sha256sum")), "no sha256sum here");
        Map<String, byte[]> files = Map.of("a.pdf", bytes("one"), "b.svg", bytes("two"));
        for (var file : files.entrySet()) {
            Files.write(folder.resolve(file.getKey()), file.getValue());
        }
        Files.write(folder.resolve(Manifest.NAME), Manifest.of(files).bytes());

        assertThat(check(folder)).isZero();
        Files.writeString(folder.resolve("b.svg"), "twp");
        assertThat(check(folder)).isNotZero();
    }

    private static int check(Path folder) throws Exception {
        return new ProcessBuilder("/usr/bin/sha256sum", "--check", "--strict", Manifest.NAME)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor();
    }
}
