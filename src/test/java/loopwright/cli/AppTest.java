package loopwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AppTest {

    @Test
    void saysItsVersionFromTheBuild() {
        Ran ran = Ran.of("--version");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).matches("loopwright \\d+\\.\\d+\\.\\d+\\R");
    }

    @Test
    void helpHasExamplesAndExitCodes() {
        for (String[] args : new String[][] {
            {"--help"},
            {"fit", "--help"},
            {"unlock", "--help"},
            {"measure", "--help"},
            {"check", "--help"},
            {"completion", "--help"}
        }) {
            Ran ran = Ran.of(args);
            assertThat(ran.code()).isZero();
            assertThat(ran.out())
                    .contains("Example", "loopwright ", "Exit codes:", "stopped before complete", "our own bug");
            assertThat(ran.outLines()).allMatch(line -> line.length() <= 100);
        }
    }

    @Test
    void refusesAWrongCommandLine() {
        assertThat(Ran.of().errLines())
                .first()
                .isEqualTo(
                        "loopwright: a command is missing: fit, unlock, rank, inspect, compare, why, measure, workshop,"
                                + " check or completion");
        assertThat(Ran.of().code()).isEqualTo(2);
        assertThat(Ran.of("fit").code()).isEqualTo(2);
        assertThat(Ran.of("fit").errLines())
                .containsExactly("loopwright: Missing required parameter: 'BRIEF'", "Try: loopwright fit --help");
        assertThat(Ran.of("fit", "scenarios/micro.yaml", "--format", "xml").code())
                .isEqualTo(2);
        assertThat(Ran.of("check").code()).isEqualTo(2);
    }

    @Test
    void printsACompletionScript() {
        Ran ran = Ran.of("completion");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("complete -F", "--chassis");
    }

    @Test
    void checkCountsFilesAndProblems(@TempDir Path folder) throws IOException {
        Ran good = Ran.of("check", "scenarios", "catalogs");
        assertThat(good.code()).isZero();
        assertThat(good.out()).matches("\\d+ files, no problems\\R");
        Path file = folder.resolve("bad.yaml");
        Files.writeString(file, "schema: loopwright/nonsense/1\n");
        Ran bad = Ran.of("check", file.toString(), "--catalog", "catalogs");
        assertThat(bad.code()).isEqualTo(3);
        assertThat(bad.outLines()).last().asString().matches("1 file, [1-9]\\d* problems?");
        assertThat(bad.outLines()).first().asString().contains("bad.yaml:1:");
    }

    @Test
    void wrongFilesEndWithThree(@TempDir Path folder) throws IOException {
        Ran none = Ran.of("fit", "scenarios/none.yaml");
        assertThat(none.code()).isEqualTo(3);
        assertThat(none.out()).isEmpty();
        assertThat(none.errLines()).first().asString().startsWith("scenarios/none.yaml:1:1: ");
        Ran nowhere = Ran.of("fit", "scenarios/micro.yaml", "--catalog", folder.toString());
        assertThat(nowhere.code()).isEqualTo(3);
        assertThat(nowhere.err()).doesNotContain("Exception");
    }

    @Test
    void outputThatCannotBeWrittenEndsWithFive() {
        Writer broken = new Writer() {
            @Override
            public void write(char[] text, int from, int length) throws IOException {
                throw new IOException("full");
            }

            @Override
            public void flush() {
                // Nothing is kept.
            }

            @Override
            public void close() {
                // Nothing is open.
            }
        };
        App.Streams streams = new App.Streams(new PrintWriter(broken), new PrintWriter(Writer.nullWriter()));
        assertThat(App.run(streams, "--version")).isEqualTo(5);
    }

    @Test
    void namesTheMissingBriefAndNothingElse() {
        Ran ran = Ran.of("fit", "no-such-folder/nope.yaml");
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err().lines())
                .singleElement()
                .asString()
                .startsWith("no-such-folder/nope.yaml:1:1: found no such file");
    }
}
