package loopwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Regression: what {@code unlock} prints for the demo. Written anew with {@code -Dgolden.write=true}. */
class UnlockGoldenTest {

    private static final Path GOLDEN = Path.of("src/test/resources/golden/unlock-demo.txt");

    @Test
    void printsTheDemoAsBefore() throws IOException {
        Ran ran = Ran.of("unlock", "scenarios/demo.yaml");
        assertThat(ran.code()).isZero();
        assertThat(ran.outLines()).allMatch(line -> line.length() <= 100);
        String text = ran.out().replaceAll("catalogue [0-9a-f]{12}, loopwright \\S+", "catalogue *, loopwright *");
        if (Boolean.getBoolean("golden.write")) {
            Files.createDirectories(GOLDEN.getParent());
            Files.writeString(GOLDEN, text);
        }
        assertThat(text).isEqualTo(Files.readString(GOLDEN));
    }
}
