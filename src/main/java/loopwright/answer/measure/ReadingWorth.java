package loopwright.answer.measure;

import loopwright.quantity.Dimension;
import loopwright.quantity.Distribution;
import loopwright.tolerance.NormalCurve;
import loopwright.tolerance.ReadOff;
import loopwright.tolerance.Unsure;

/**
 * What one reading would change for one layout: the expected share of wrong decisions that it avoids, 0 to 1.
 *
 * <p>Who sees a chance of a clash above one half changes the plan on paper, else goes on. Up to one half (nobody would change
 * the plan unread) what is avoided is the clash that the reading foretells: the mean of the chance of a clash given the
 * reading, over readings that put it above one half. Above one half (the plan would be changed unread) it is a plan wrongly
 * dropped: the mean of the chance that it fits given the reading, over readings that put the clash at one half or less. A
 * reading that can change no decision is worth nothing.
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
        return mean(clashes, rectangular ? even : shares, clash <= HALF);
    }

    /** The mean of the chance of a clash where it is above one half, or of a fit where it is not. */
    private static double mean(double[] clashes, double[] shares, boolean ofClashes) {
        double sum = 0;
        for (int i = 0; i < shares.length; i++) {
            sum += shares[i]
                    * (ofClashes ? above(clashes[i], clashes[i + 1]) : above(1 - clashes[i], 1 - clashes[i + 1]));
        }
        return sum;
    }

    /** The mean along a line from one value to another of what lies above one half. */
    private static double above(double one, double other) {
        double low = Math.min(one, other);
        double high = Math.max(one, other);
        if (high <= HALF) {
            return 0;
        }
        if (low >= HALF) {
            return (low + high) / 2;
        }
        return (high - HALF) / (high - low) * (HALF + high) / 2;
    }
}
