package loopwright.loop.exchange;

/**
 * Effectiveness of other arrangements, for tests only: Kays and London, Compact Heat Exchangers, Table 2-2; Incropera and
 * DeWitt, Table 11.3. n: transfer units above 0, r: capacity ratio in (0, 1].
 */
final class Arrangements {

    private Arrangements() {}

    static double counterflow(double n, double r) {
        if (r == 1) { // exactly: the general form is 0/0 there
            return n / (1 + n);
        }
        double e = Math.exp(-n * (1 - r));
        return (1 - e) / (1 - r * e);
    }

    static double parallel(double n, double r) {
        return (1 - Math.exp(-n * (1 + r))) / (1 + r);
    }

    static double largerMixed(double n, double r) {
        return (1 - Math.exp(-r * (1 - Math.exp(-n)))) / r;
    }

    static double smallerMixed(double n, double r) {
        return 1 - Math.exp(-(1 - Math.exp(-r * n)) / r);
    }

    static double bothMixed(double n, double r) {
        return n / (n / (1 - Math.exp(-n)) + r * n / (1 - Math.exp(-r * n)) - 1);
    }

    /** Transfer units that counterflow needs for an effectiveness. */
    static double counterflowTransferUnits(double effectiveness, double r) {
        if (r == 1) { // exactly, as above
            return effectiveness / (1 - effectiveness);
        }
        return Math.log((effectiveness - 1) / (effectiveness * r - 1)) / (r - 1);
    }
}
