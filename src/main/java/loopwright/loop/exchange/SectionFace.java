package loopwright.loop.exchange;

/**
 * Face of one fan's section of a radiator.
 *
 * <p><b>Units.</b> Fan size in mm, area in m².
 *
 * <p><b>Valid for</b> the sizes of fans. 120 and 140 mm: trade practice. Other sizes: ASSUMED to go with the square of the size
 * from the 120's (see {@code src/site/markdown/physics/assumptions.md}); that would give the 140's 1.3 % less than its own
 * figure.
 *
 * <p><b>Source.</b> Trade practice, from memory.
 */
public final class SectionFace {

    /** Face of a 120 mm section, m²; trade practice, from memory. */
    private static final double FACE_120_M2 = 0.0132;

    /** Face of a 140 mm section, m²; trade practice, from memory. */
    private static final double FACE_140_M2 = 0.0182;

    private SectionFace() {}

    /** Face of one fan's section, m². */
    public static double areaM2(int sizeMm) {
        if (sizeMm == 140) {
            return FACE_140_M2;
        }
        double ratio = sizeMm / 120.0;
        return FACE_120_M2 * ratio * ratio;
    }
}
