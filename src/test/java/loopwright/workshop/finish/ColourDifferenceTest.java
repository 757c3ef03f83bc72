package loopwright.workshop.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Stream;
import loopwright.catalog.brief.Look.Lab;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * CIEDE2000 against the 34 published pairs: G. Sharma, W. Wu, E. N. Dalal, Color Research and Application 30(1), 21-30, 2005,
 * Table 1, to the four decimals it prints.
 */
class ColourDifferenceTest {

    private static final double PRINTED = 1e-4;

    record Pair(Lab one, Lab other, double published) {}

    static List<Pair> pairs() throws IOException {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(ColourDifferenceTest.class.getResourceAsStream("/colour/ciede2000.csv")),
                StandardCharsets.UTF_8))) {
            return in.lines()
                    .filter(l -> !l.startsWith("#") && !l.isBlank())
                    .map(l -> Arrays.stream(l.split(","))
                            .map(String::strip)
                            .map(Double::valueOf)
                            .toList())
                    .map(n -> new Pair(
                            new Lab(n.get(0), n.get(1), n.get(2)), new Lab(n.get(3), n.get(4), n.get(5)), n.get(6)))
                    .toList();
        }
    }

    @Test
    void thereAreThirtyFourPairs() throws IOException {
        assertThat(pairs()).hasSize(34);
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void agreesWithThePublishedPair(Pair pair) {
        assertThat(ColourDifference.of(pair.one(), pair.other())).isCloseTo(pair.published(), within(PRINTED));
        assertThat(ColourDifference.of(pair.other(), pair.one())).isCloseTo(pair.published(), within(PRINTED));
    }

    static Stream<Long> seeds() {
        return Stream.iterate(1L, s -> s + 1).limit(200);
    }

    /** Of itself nothing; of greys the same by any hue; never below nothing, the same both ways. */
    @ParameterizedTest
    @MethodSource("seeds")
    void isADifference(long seed) {
        Random dice = new Random(seed);
        Lab one = lab(dice);
        Lab other = lab(dice);
        double there = ColourDifference.of(one, other);
        assertThat(ColourDifference.of(one, one)).as("seed %d", seed).isZero();
        assertThat(there).as("seed %d", seed).isPositive();
        assertThat(ColourDifference.of(other, one)).as("seed %d", seed).isCloseTo(there, within(1e-9));
    }

    private static Lab lab(Random dice) {
        return new Lab(100 * dice.nextDouble(), 200 * dice.nextDouble() - 100, 200 * dice.nextDouble() - 100);
    }
}
