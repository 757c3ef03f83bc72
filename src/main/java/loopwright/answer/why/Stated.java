package loopwright.answer.why;

import java.util.Optional;

/**
 * A fact in a sentence with its numbers.
 *
 * @param id the fact's id
 * @param sentence what it says
 * @param lack how much is lacking, where that can be said
 */
public record Stated(String id, String sentence, Optional<Lack> lack) {

    private static final double HUNDREDTHS = 100;

    /** How much is lacking: millimetres, kelvin, money, decibels, hours or days. */
    public record Lack(double amount, String unit) {}

    static Stated of(String id, String sentence) {
        return new Stated(id, sentence, Optional.empty());
    }

    static Stated ofRoom(String id, String sentence, int lackHmm) {
        return new Stated(id, sentence, Optional.of(new Lack(lackHmm / HUNDREDTHS, "mm")));
    }

    /** What is lacking, 0 where it cannot be said. */
    double amount() {
        return lack.map(Lack::amount).orElse(0.0);
    }
}
