package loopwright.answer.why;

import java.util.OptionalInt;

/**
 * A fact in a sentence with its numbers.
 *
 * @param id the fact's id
 * @param sentence what it says
 * @param lackHmm how much is lacking, hundredths of a millimetre, where the fact is about room
 */
public record Stated(String id, String sentence, OptionalInt lackHmm) {

    static Stated of(String id, String sentence) {
        return new Stated(id, sentence, OptionalInt.empty());
    }
}
