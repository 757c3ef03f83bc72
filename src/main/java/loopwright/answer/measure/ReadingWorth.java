package loopwright.answer.measure;

import loopwright.quantity.Dimension;
import loopwright.quantity.Distribution;
import loopwright.tolerance.NormalCurve;
import loopwright.tolerance.ReadOff;
import loopwright.tolerance.Unsure;

/**
 * What one reading would change for one layout: the expected share of wrong decisions that it avoids, 0 to 1.
 *
 * <p>Who sees a chance of a clash above one half changes the plan on paper, else goes on. Wrong is to go on into a clash, and
 * to drop a plan that would have fitted; one half is the right border exactly when both cost the same, so both count the
 * same. With the chance c of a clash given the reading, what is avoided is min(p, 1−p) − the mean of min(c, 1−c), p being
 * the mean of c. A reading that can change no decision is worth nothing, and none is worth less.
 *
 * <p>Readings are spread about what is believed, with the variance of that less the reading's own, so that what is believed on
 * the whole stays the same. An instrument that is no surer than what is believed is worth nothing.
 *
 * <p><b>Accuracy.</b> Between {@value #PLACES} places from −4 to +4 standard deviations the chance is taken as linear: within
 * 0.002 of the closed form of one margin (ReadingWorthTest).
 */
final class ReadingWorth {

    private static final int PLACES = 33;
    private static final double REACH = 4;
    private static final double HALF = 0.5;
    private static final double SIGMAS = 2;

    private final double[] shares = new double[PLACES - 1];
    private final double[] even = new double[PLACES - 1];
    private final double[] places = new double[PLACES];

    ReadingWorth() {
        for (int i = 0; i < PLACES; i++) {
            places[i] = REACH * (2.0 * i / (PLACES - 1) - 1);
        }
        for (int i = 0; i < PLACES - 1; i++) {
            double low = i == 0 ? 0 : NormalCurve.below(places[i]);
            double high = i == PLACES - 2 ? 1 : NormalCurve.below(places[i + 1]);
            shares[i] = high - low;
            even[i] = 1.0 / (PLACES - 1);
        }
    }

    /**
     * What a reading avoids.
     *
     * @param clash the chance of a clash unread, 0 to 1
     * @param about the margins that are not sure and have the dimension in them
     * @param name the dimension's name in them
     * @param plusMinusHmm what the reading would be believed to
     */
    double avoided(double clash, Unsure about, String name, Dimension now, int plusMinusHmm) {
        boolean rectangular = now.distribution() == Distribution.RECTANGULAR;
        double sigma = now.plusMinusHmm() / (rectangular ? Math.sqrt(3) : SIGMAS);
        double own = plusMinusHmm / SIGMAS;
        if (own >= sigma) {
            return 0;
        }
        double spread = Math.sqrt(sigma * sigma - own * own);
        double step = rectangular ? spread * Math.sqrt(3) / REACH : spread;
        double before = about.chance();
        double others = before > 0 ? (1 - clash) / before : 0;
        double[] clashes = new double[PLACES];
        for (int i = 0; i < PLACES; i++) {
            double fits = others * about.chance(new ReadOff(name, step * places[i], plusMinusHmm));
            clashes[i] = 1 - Math.min(1, fits);
        }
        return avoided(clashes, rectangular ? even : shares);
    }

    private static double avoided(double[] clashes, double[] shares) {
        double mean = 0;
        double wrong = 0;
        for (int i = 0; i < shares.length; i++) {
            mean += shares[i] * (clashes[i] + clashes[i + 1]) / 2;
            wrong += shares[i] * wrong(clashes[i], clashes[i + 1]);
        }
        return Math.max(0, Math.min(mean, 1 - mean) - wrong);
    }

    /** The mean along a line of how likely the better decision is wrong. */
    private static double wrong(double one, double other) {
        double first = Math.min(one, 1 - one);
        double last = Math.min(other, 1 - other);
        if ((one <= HALF) == (other <= HALF)) {
            return (first + last) / 2;
        }
        double crossing = (HALF - one) / (other - one);
        return crossing * (first + HALF) / 2 + (1 - crossing) * (HALF + last) / 2;
    }
}
