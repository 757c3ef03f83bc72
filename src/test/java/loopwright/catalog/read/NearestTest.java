package loopwright.catalog.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestTest {

    @Test
    void findsATypingError() {
        assertThat(Nearest.to("heigth_mm", List.of("length_mm", "height_mm"))).contains("height_mm");
        assertThat(Nearest.distance("heigth", "height")).isEqualTo(1);
    }

    @Test
    void makesNothingUp() {
        assertThat(Nearest.to("colour", List.of("length_mm", "height_mm"))).isEmpty();
        assertThat(Nearest.to("5", List.of("id"))).isEmpty();
        assertThat(Nearest.to("", List.of("id"))).isEmpty();
        assertThat(Nearest.hint("x".repeat(100_000), List.of("x"))).isEmpty();
    }
}
