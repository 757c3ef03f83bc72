package loopwright.catalog.measure;

import loopwright.quantity.Hundredths;

/**
 * Two readings of one length that cannot both be right: they differ by more than their ± together.
 *
 * @param length as the catalogue has it, and as it stays
 * @param one the earlier of the two
 * @param other the later
 */
public record Contradiction(Length length, Taken one, Taken other) {

    /** How far they differ, hundredths of a millimetre. */
    public int differenceHmm() {
        return Math.abs(one.valueHmm() - other.valueHmm());
    }

    /** What is said of it. */
    public String sentence() {
        String stays = length.dimension().isUnknown()
                ? "it stays unknown"
                : "the catalogue's " + Hundredths.text(length.dimension().valueHmm()) + " mm stays";
        return length.address() + " was read as " + one.text() + " and as " + other.text() + ": they differ by "
                + Hundredths.text(differenceHmm()) + " mm, more than their +- together ("
                + Hundredths.text(one.plusMinusHmm() + other.plusMinusHmm()) + " mm). Neither is used, " + stays
                + ": measure again.";
    }
}
