package loopwright.answer.measure;

import java.util.Comparator;

/**
 * What measuring a known dimension is worth.
 *
 * @param regretCents expected, avoided by the instrument that is chosen
 * @param spot where it is taken, in words
 */
public record Worth(Measurable measurable, Hang hang, double regretCents, InstrumentChoice choice, String spot) {

    /** What avoids most first, then what most hangs on, then by name. */
    static final Comparator<Worth> MOST_FIRST = Comparator.comparingDouble((Worth w) -> -w.regretCents())
            .thenComparingInt(w -> -w.hang().layouts())
            .thenComparing(Worth::measurable);

    /** The same with what hangs on it looked for anew. */
    Worth with(Hang found) {
        return new Worth(measurable, found, regretCents, choice, spot);
    }
}
