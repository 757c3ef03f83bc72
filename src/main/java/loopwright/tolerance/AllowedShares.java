package loopwright.tolerance;

/** What is left of 0 to 1 after intervals have been taken out of it; made once and used over and over. */
final class AllowedShares {

    private final double[] from;
    private final double[] to;
    private final int[] count = {0};

    /**
     * Room for so many intervals to be taken out.
     *
     * @param most intervals taken out between two resets
     */
    AllowedShares(int most) {
        this.from = new double[most + 1];
        this.to = new double[most + 1];
    }

    /** Everything is allowed again. */
    void reset() {
        count[0] = 1;
        from[0] = 0;
        to[0] = 1;
    }

    /** Takes an interval out. */
    void forbid(double low, double high) {
        int before = count[0];
        for (int i = before - 1; i >= 0; i--) {
            if (high <= from[i] || low >= to[i]) {
                continue;
            }
            if (low > from[i] && high < to[i]) {
                from[count[0]] = high;
                to[count[0]] = to[i];
                count[0]++;
                to[i] = low;
            } else if (low > from[i]) {
                to[i] = low;
            } else if (high < to[i]) {
                from[i] = high;
            } else {
                count[0]--;
                from[i] = from[count[0]];
                to[i] = to[count[0]];
            }
        }
    }

    /** How much is allowed, 0 to 1. */
    double total() {
        double sum = 0;
        for (int i = 0; i < count[0]; i++) {
            sum += to[i] - from[i];
        }
        return sum;
    }

    /**
     * The share at which so much of what is allowed lies before it, in the order of the pieces.
     *
     * @param amount 0 to the total
     */
    double at(double amount) {
        double left = amount;
        for (int i = 0; i < count[0] - 1; i++) {
            if (left <= to[i] - from[i]) {
                return from[i] + left;
            }
            left -= to[i] - from[i];
        }
        int end = count[0] - 1;
        return Math.min(to[end], from[end] + left);
    }
}
