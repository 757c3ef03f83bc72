package loopwright.paper.book;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A headless Chromium, where one is installed: lays out a page and prints it. */
final class Browser {

    private static final List<String> PLACES = List.of("/usr/bin/chromium", "/usr/bin/chromium-browser");
    private static final int SECONDS = 120;

    private final Path folder;

    Browser(Path folder) {
        this.folder = folder;
    }

    static boolean isInstalled() {
        return PLACES.stream().anyMatch(p -> Files.isExecutable(Path.of(p)));
    }

    /** What the probe says of a page as wide as an A4 sheet at 96 dots an inch. */
    String probed(byte[] page) throws IOException, InterruptedException {
        String probe;
        try (var in = Browser.class.getResourceAsStream("layout-probe.js")) {
            probe = new String(java.util.Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        }
        String html =
                new String(page, StandardCharsets.UTF_8).replace("</body>", "<script>" + probe + "</script></body>");
        Path file = Files.writeString(folder.resolve("probed.html"), html);
        String dom = run("--window-size=794,1123", "--dump-dom", file.toUri().toString());
        int from = dom.indexOf("<pre id=\"probe\">");
        return from < 0 ? "no probe in: " + dom : dom.substring(from + 16, dom.indexOf("</pre>", from));
    }

    /** The page on paper, as a PDF. */
    byte[] printed(byte[] page) throws IOException, InterruptedException {
        Path file = Files.write(folder.resolve("printed.html"), page);
        Path pdf = folder.resolve("printed.pdf");
        run("--no-pdf-header-footer", "--print-to-pdf=" + pdf, file.toUri().toString());
        return Files.readAllBytes(pdf);
    }

    private String run(String... arguments) throws IOException, InterruptedException {
        Path profile = Files.createTempDirectory(folder, "profile");
        List<String> command = new ArrayList<>(List.of(
                PLACES.stream()
                        .filter(p -> Files.isExecutable(Path.of(p)))
                        .findFirst()
                        .orElseThrow(),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--user-data-dir=" + profile));
        Stream.of(arguments).forEach(command::add);
        Path out = folder.resolve("out.txt");
        Process process = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        if (!process.waitFor(SECONDS, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IllegalStateException("the browser took more than " + SECONDS + " s");
        }
        return Files.readString(out);
    }
}
