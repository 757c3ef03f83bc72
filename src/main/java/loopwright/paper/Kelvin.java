package loopwright.paper;

import java.math.BigDecimal;
import java.util.Optional;
import loopwright.answer.Unlocks.Gain;
import loopwright.loop.Band;

/** Temperature differences as answers show them. */
final class Kelvin {

    private Kelvin() {}

    /** {@code 1.9 K cooler (1.3 to 2.5)}; the band runs the way the word says. */
    static String gain(Gain gain) {
        Band band = gain.band();
        BigDecimal value = Mm.rounded(gain.gainK(), 1);
        if (value.signum() == 0) {
            return "as cool (" + signed(band.lowK(), 1) + " to " + signed(band.highK(), 1) + " K)";
        }
        boolean cooler = value.signum() > 0;
        double from = cooler ? band.lowK() : -band.highK();
        double to = cooler ? band.highK() : -band.lowK();
        return text(Math.abs(gain.gainK())) + " K " + (cooler ? "cooler" : "warmer") + " (" + text(from) + " to "
                + text(to) + ")";
    }

    /** {@code  +-1.2}: half the band, with a space before it; nothing without a band. */
    static String plusMinus(Optional<Band> band) {
        return band.map(b -> " +-" + text((b.highK() - b.lowK()) / 2)).orElse("");
    }

    /** One decimal. */
    static String text(double valueK) {
        BigDecimal rounded = Mm.rounded(valueK, 1);
        return rounded.toPlainString();
    }

    /** With its sign, plus too. */
    static String signed(double value, int decimals) {
        BigDecimal rounded = Mm.rounded(value, decimals);
        return (rounded.signum() > 0 ? "+" : "") + rounded.toPlainString();
    }
}
