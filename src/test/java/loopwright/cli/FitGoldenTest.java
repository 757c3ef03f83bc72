package loopwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Regression: what {@code fit} prints for the demo. */
class FitGoldenTest {

    @Test
    void printsTheDemoAsBefore() throws IOException {
        Ran ran = Ran.of("fit", "scenarios/demo.yaml");
        assertThat(ran.code()).isZero();
        Golden.check(ran, "fit-demo.txt");
    }
}
