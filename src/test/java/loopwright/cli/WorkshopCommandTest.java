package loopwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code workshop} refuses, in words, before it writes anything. */
class WorkshopCommandTest {

    private static Ran workshop(Path out, String... more) {
        String[] args = new String[6 + more.length];
        System.arraycopy(
                new String[] {"workshop", "scenarios/slim-desk.yaml", "--build", "22222-22222", "--out", out.toString()
                },
                0,
                args,
                0,
                6);
        System.arraycopy(more, 0, args, 6, more.length);
        return Ran.of(args);
    }

    private static void refused(Ran ran, String why, Path out) throws IOException {
        assertThat(ran.code()).isEqualTo(ExitCode.COMMAND_LINE);
        assertThat(ran.errLines()).first().isEqualTo("loopwright: " + why);
        assertThat(ran.err()).doesNotContain("java.");
        assertThat(Files.exists(out)).isFalse();
    }

    @Test
    void aDayReadsLikeADay(@TempDir Path root) throws IOException {
        Path out = root.resolve("papers");
        refused(
                workshop(out, "--start", "monday"),
                "--start must be a day like 2027-01-11 but was \"monday\"; nothing was written",
                out);
        refused(
                workshop(out, "--start", "2027-02-30"),
                "--start must be a day like 2027-01-11 but was \"2027-02-30\"; nothing was written",
                out);
        refused(workshop(out), "the brief says no day to begin on: say --start DATE, like 2027-01-11", out);
    }

    @Test
    void papersAreNoAnswerForPrograms(@TempDir Path root) throws IOException {
        Path out = root.resolve("papers");
        refused(
                workshop(out, "--start", "2027-01-11", "--format", "json"),
                "workshop writes papers into a folder; --format is for the other commands",
                out);
    }

    @Test
    void aKeyThatNoBuildHasIsANo(@TempDir Path root) {
        Path out = root.resolve("papers");
        Ran ran = workshop(out, "--start", "2027-01-11");
        assertThat(ran.code()).isEqualTo(ExitCode.NO);
        assertThat(ran.err()).contains("no build has the key 22222-22222");
        assertThat(Files.exists(out)).isFalse();
    }
}
