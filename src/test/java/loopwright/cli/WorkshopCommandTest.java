package loopwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import loopwright.paper.Manifest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

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
    void spreadsheetsAreAmongThePapers(@TempDir Path root) throws IOException {
        Path out = root.resolve("papers");
        refused(
                workshop(out, "--start", "2027-01-11", "--format", "csv"),
                "workshop answers as table or json; for spreadsheets, orders.csv is among the papers",
                out);
    }

    @Test
    void aDayFarFromNowIsASlip(@TempDir Path root) throws IOException {
        Path out = root.resolve("papers");
        for (String day : new String[] {"1999-12-31", "2200-01-01"}) {
            refused(
                    workshop(out, "--start", day),
                    "--start must be from 2000-01-01 to 2199-12-31 but was " + day + "; nothing was written",
                    out);
        }
    }

    @Test
    void aFolderHasAName(@TempDir Path root) {
        Ran ran = Ran.of(
                "workshop", "scenarios/slim-desk.yaml", "--build", "22222-22222", "--out", "", "--start", "monday");
        assertThat(ran.code()).isEqualTo(ExitCode.COMMAND_LINE);
        assertThat(ran.errLines())
                .startsWith(
                        "loopwright: --out must name a folder but was \"\"; a . is the folder you are in",
                        "loopwright: --start must be a day like 2027-01-11 but was \"monday\"; nothing was written");
    }

    @Test
    void wrongFilesAndAWrongDayAreToldTogether(@TempDir Path root) throws IOException {
        Path brief = root.resolve("brief.yaml");
        Files.writeString(
                brief, Files.readString(Path.of("scenarios/slim-desk.yaml")).replaceFirst("id: .*", "id: ../../evil"));
        Ran ran = Ran.of(
                "workshop",
                brief.toString(),
                "--catalog",
                "catalogs",
                "--build",
                "22222-22222",
                "--out",
                root.resolve("papers").toString(),
                "--start",
                "monday");
        assertThat(ran.code()).isEqualTo(ExitCode.INPUT);
        assertThat(ran.err())
                .contains("--start must be a day like 2027-01-11")
                .contains("id: found \"../../evil\", allowed small letters, digits and single hyphens, at most 60");
    }

    @Test
    void aFolderThatCannotBeWrittenIsToldAtOnce(@TempDir Path root) throws IOException {
        Path file = Files.writeString(root.resolve("f"), "");
        Ran ran = workshop(file, "--start", "2027-01-11");
        assertThat(ran.code()).isEqualTo(ExitCode.OUTPUT);
        assertThat(ran.errLines())
                .containsExactly(
                        "loopwright: " + file + " is a file, not a folder: name a folder; nothing was written");

        Path out = Files.createDirectory(root.resolve("papers"));
        Files.createDirectories(out.resolve("book.html/mine"));
        ran = workshop(out, "--start", "2027-01-11", "--replace");
        assertThat(ran.code()).isEqualTo(ExitCode.OUTPUT);
        assertThat(ran.errLines()).hasSize(1).first().asString().contains("book.html in " + out + " is a folder");
        assertThat(out.resolve("book.html/mine")).isDirectory();

        Path taken = Files.createDirectory(root.resolve("taken"));
        Files.createSymbolicLink(taken.resolve("index.html"), root.resolve("nowhere"));
        Files.writeString(Files.createDirectory(root.resolve("old")).resolve("orders.csv"), "mine");
        assertThat(workshop(taken, "--start", "2027-01-11").code()).isEqualTo(ExitCode.OUTPUT);
        ran = workshop(root.resolve("old"), "--start", "2027-01-11");
        assertThat(ran.code()).isEqualTo(ExitCode.COMMAND_LINE);
        assertThat(ran.errLines())
                .first()
                .asString()
                .contains("has 1 of these papers already, orders.csv among them; nothing was written. Say --replace");
    }

    @Test
    void aRunThatWasStoppedIsUndoneFirst(@TempDir Path root) throws IOException {
        Path out = Files.createDirectory(root.resolve("papers"));
        Path fresh = Files.createDirectory(out.resolve(".papers-new"));
        Path old = Files.createDirectory(out.resolve(".papers-old"));
        byte[] book = {'n', 'e', 'w'};
        Files.write(
                fresh.resolve(Manifest.NAME),
                Manifest.of(Map.of("book.html", book)).bytes());
        Files.write(out.resolve("book.html"), book);
        Files.writeString(old.resolve("book.html"), "old");

        Ran ran = workshop(out, "--start", "2027-01-11");
        assertThat(ran.errLines())
                .first()
                .isEqualTo("loopwright: a run into " + out
                        + " was stopped half way: the papers before it are back in their place");
        assertThat(out.resolve("book.html")).hasContent("old");
        assertThat(PaperSwap.names(out)).containsExactly("book.html");
    }

    @Test
    void programsGetAnAnswer(@TempDir Path root) throws IOException {
        Path out = root.resolve("papers");
        JsonMapper json = new JsonMapper();
        Ran no = workshop(out, "--start", "2027-01-11", "--format", "json");
        assertThat(no.code()).isEqualTo(ExitCode.NO);
        JsonNode none = json.readTree(no.out());
        assertThat(none.path("schema").asString()).isEqualTo("loopwright/workshop/1");
        assertThat(none.path("answers").path(0).path("found").asBoolean(true)).isFalse();

        String key = json.readTree(Ran.of("rank", "scenarios/slim-desk.yaml", "--top", "1", "--format", "json")
                        .out())
                .path("answers")
                .path(0)
                .path("unbeaten")
                .path(0)
                .path("key")
                .asString();
        Ran ran = Ran.of(
                "workshop",
                "scenarios/slim-desk.yaml",
                "--build",
                key,
                "--out",
                out.toString(),
                "--start",
                "2027-01-11",
                "--sheet",
                "a3",
                "--format",
                "json");
        assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.ANSWERED);
        JsonNode answer = json.readTree(ran.out()).path("answers").path(0);
        assertThat(answer.path("complete").asBoolean(false)).isTrue();
        assertThat(answer.path("key").asString()).isEqualTo(key);
        assertThat(answer.path("out").asString()).isEqualTo(out.toString());
        JsonNode papers = answer.path("papers");
        assertThat(papers.size()).isEqualTo(PaperSwap.names(out).size()).isGreaterThan(4);
        for (JsonNode paper : papers) {
            byte[] content = Files.readAllBytes(out.resolve(paper.path("name").asString()));
            assertThat(paper.path("bytes").asLong()).isEqualTo(content.length);
            assertThat(paper.path("sha256").asString()).isEqualTo(Manifest.sum(content));
            assertThat(paper.path("title").asString()).isNotEmpty();
        }
        JsonNode quote = answer.path("quote");
        assertThat(quote.path("deposit_cents").asLong()
                        + quote.path("balance_cents").asLong())
                .isEqualTo(quote.path("gross_cents").asLong())
                .isPositive();
        assertThat(quote.path("currency").asString()).isEqualTo("EUR");
        assertThat(answer.path("schedule").path("start").asString()).isEqualTo("2027-01-11");
        assertThat(answer.path("schedule").path("finish").asString()).startsWith("2027-");
        assertThat(answer.path("refused").isArray()).isTrue();
        assertThat(answer.path("against").size()).isPositive();
        String book = Files.readString(out.resolve("book.html"));
        for (JsonNode against : answer.path("against")) {
            String words = against.asString();
            assertThat(book).contains(words.substring(0, Math.min(40, words.length())));
        }
        assertThat(out.resolve("templates-a4.pdf")).doesNotExist();
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
