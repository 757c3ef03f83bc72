package loopwright.oracle.brute;

/** A box in chassis coordinates x, y, z (hundredths of a millimetre), solid or room, with its need. */
final class BruteBox {
    /** Not hung from a far wall. */
    static final int NOWHERE = -1;

    final int[] low;
    final int[] high;
    /** How far each low face may be off, halves of a hundredth, without the inside's own size. */
    final int[] lowOff;

    final int[] highOff;
    /** The axis along which it is measured from the far wall. */
    final int hungFrom;

    final boolean room;
    final int needHmm;

    private BruteBox(int[][] faces, int hungFrom, boolean room, int needHmm) {
        this.low = faces[0];
        this.high = faces[1];
        this.lowOff = faces[2];
        this.highOff = faces[3];
        this.hungFrom = hungFrom;
        this.room = room;
        this.needHmm = needHmm;
    }

    /** A box between ends along x, y, z, in either order. */
    static BruteBox of(Len[] one, Len[] other, int hungFrom, boolean room, int needHmm) {
        int[][] faces = new int[4][3];
        for (int axis = 0; axis < 3; axis++) {
            boolean sorted = one[axis].hmm() <= other[axis].hmm();
            Len low = sorted ? one[axis] : other[axis];
            Len high = sorted ? other[axis] : one[axis];
            faces[0][axis] = low.hmm();
            faces[1][axis] = high.hmm();
            faces[2][axis] = low.offHalves();
            faces[3][axis] = high.offHalves();
        }
        return new BruteBox(faces, hungFrom, room, needHmm);
    }

    BruteBox moved(int axisU, int uHmm, int axisV, int vHmm) {
        int[] newLow = low.clone();
        int[] newHigh = high.clone();
        newLow[axisU] += uHmm;
        newHigh[axisU] += uHmm;
        newLow[axisV] += vHmm;
        newHigh[axisV] += vHmm;
        return new BruteBox(new int[][] {newLow, newHigh, lowOff, highOff}, hungFrom, room, needHmm);
    }

    /** The largest signed separation along an axis. */
    int clearanceHmm(BruteBox other) {
        int best = Integer.MIN_VALUE;
        for (int axis = 0; axis < 3; axis++) {
            best = Math.max(best, Math.max(low[axis] - other.high[axis], other.low[axis] - high[axis]));
        }
        return best;
    }
}
