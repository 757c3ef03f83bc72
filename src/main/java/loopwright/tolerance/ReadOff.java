package loopwright.tolerance;

/**
 * A dimension after an instrument has read it.
 *
 * <p>Units: hundredths of a millimetre.
 *
 * @param name of the dimension in the margins
 * @param offHmm how far the reading is off what was believed
 * @param plusMinusHmm what the reading is believed to: two standard deviations of a normal spread
 */
public record ReadOff(String name, double offHmm, double plusMinusHmm) {}
