package loopwright.oracle.brute;

import loopwright.quantity.Dimension;

/**
 * A length and how far it may be off.
 *
 * @param hmm nominal, hundredths of a millimetre
 * @param offHalves sum of the ± of what it is made of, in halves of a hundredth
 */
record Len(int hmm, int offHalves) {

    static Len exact(int hmm) {
        return new Len(hmm, 0);
    }

    static Len of(Dimension dimension) {
        return new Len(dimension.valueHmm(), 2 * dimension.plusMinusHmm());
    }

    Len plus(Len more) {
        return new Len(hmm + more.hmm, offHalves + more.offHalves);
    }

    Len minus(Len less) {
        return new Len(hmm - less.hmm, offHalves + less.offHalves);
    }

    Len turned() {
        return new Len(-hmm, offHalves);
    }

    Len half() {
        return new Len(Math.floorDiv(hmm, 2), offHalves / 2);
    }
}
