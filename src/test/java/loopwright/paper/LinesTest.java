package loopwright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LinesTest {

    @Test
    void breaksAtSpaces() {
        assertThat(Lines.wrap("head ", "word ".repeat(40).strip()))
                .hasSizeGreaterThan(1)
                .allMatch(l -> l.length() <= Lines.WIDTH && l.startsWith(l.startsWith("head") ? "head" : "     word"));
    }

    @Test
    void cutsAWordThatNoLineCanHold() {
        String word = "x".repeat(400);
        assertThat(Lines.wrap("head ", word)).allMatch(l -> l.length() <= Lines.WIDTH);
        assertThat(String.join("", Lines.wrap("head ", word)).replace(" ", "")).isEqualTo("head" + word);
    }
}
