package loopwright.workshop.fasten;

import loopwright.quantity.Dimension;
import loopwright.quantity.Known;

/** A layer between a screw's head and its thread, as thick as it is when clamped. */
public record Clamped(String name, Dimension thickness) {

    /** Refuses a layer of less than nothing. */
    public Clamped {
        if (thickness.valueHmm() < 0) {
            throw new IllegalArgumentException("a layer is at least 0 thick but was " + thickness.valueHmm());
        }
    }

    /** A layer of exactly this thickness. */
    public static Clamped exactly(String name, int thicknessHmm) {
        return new Clamped(name, new Dimension(thicknessHmm, 0, Known.DATASHEET));
    }

    /** Its thickness, hundredths of a millimetre. */
    public int thicknessHmm() {
        return thickness.valueHmm();
    }
}
