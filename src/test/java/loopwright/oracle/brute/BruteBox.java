package loopwright.oracle.brute;

/** A box in chassis coordinates x, y, z (hundredths of a millimetre), solid or room, with its need. */
final class BruteBox {
    final int[] low;
    final int[] high;
    final boolean room;
    final int needHmm;

    BruteBox(int[] low, int[] high, boolean room, int needHmm) {
        this.low = low;
        this.high = high;
        this.room = room;
        this.needHmm = needHmm;
    }

    int clearanceHmm(BruteBox other) {
        int best = Integer.MIN_VALUE;
        for (int axis = 0; axis < 3; axis++) {
            best = Math.max(best, low[axis] - other.high[axis]);
            best = Math.max(best, other.low[axis] - high[axis]);
        }
        return best;
    }

    BruteBox moved(int axisU, int uHmm, int axisV, int vHmm) {
        int[] newLow = low.clone();
        int[] newHigh = high.clone();
        newLow[axisU] += uHmm;
        newHigh[axisU] += uHmm;
        newLow[axisV] += vHmm;
        newHigh[axisV] += vHmm;
        return new BruteBox(newLow, newHigh, room, needHmm);
    }
}
