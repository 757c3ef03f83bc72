package loopwright.catalog.measure;

import java.time.LocalDate;
import loopwright.quantity.Dimension;
import loopwright.quantity.Hundredths;
import loopwright.quantity.Known;

/**
 * A reading that was understood.
 *
 * @param length what it is of, as the catalogue has it
 * @param plusMinusHmm what the reading is believed to, its own or its instrument's
 * @param place file and line that it is from
 */
public record Taken(Length length, int valueHmm, int plusMinusHmm, String instrument, LocalDate date, String place) {

    /** As a value of the length. */
    Dimension dimension() {
        return new Dimension(valueHmm, plusMinusHmm, Known.MEASURED);
    }

    /** {@code 434.2 +-0.15 mm (rods, 2026-03-09)}. */
    String text() {
        return Hundredths.text(valueHmm) + " +-" + Hundredths.text(plusMinusHmm) + " mm (" + instrument + ", " + date
                + ")";
    }

    /** How far two readings differ beyond what their ± together allow; 0 or less when they agree. */
    int beyond(Taken other) {
        return Math.abs(valueHmm - other.valueHmm) - plusMinusHmm - other.plusMinusHmm;
    }
}
