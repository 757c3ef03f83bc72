package loopwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;

/** Regression: what {@code rank} prints for the demo, and that the README shows the start of just that. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class RankGoldenTest {

    private static final Path README = Path.of("README.md");

    /** Lines of the answer that the README shows: the table, the differences, and the first build. */
    private static final int LINES_SHOWN = 32;

    private static final Pattern BLOCK =
            Pattern.compile("(<!-- rank-demo: [^\\n]* -->\\n```\\n)(.*?)(```\\n)", Pattern.DOTALL);

    @Test
    @Order(1)
    void printsTheDemoAsBefore() throws IOException {
        Ran ran = Ran.of("rank", "scenarios/demo.yaml");
        assertThat(ran.code()).isZero();
        Golden.check(ran, "rank-demo.txt");
    }

    @Test
    @Order(2)
    void readmeShowsIt() throws IOException {
        StringBuilder shown = new StringBuilder();
        Golden.read("rank-demo.txt")
                .lines()
                .limit(LINES_SHOWN)
                .forEach(l -> shown.append(l).append('\n'));
        shown.append("...\n");
        String readme = Files.readString(README);
        Matcher block = BLOCK.matcher(readme);
        assertThat(block.find()).isTrue();
        if (Golden.isWriting()) {
            String before = readme.substring(0, block.start(2));
            Files.writeString(README, before + shown + readme.substring(block.end(2)));
        } else {
            assertThat(block.group(2)).isEqualTo(shown.toString());
        }
    }
}
