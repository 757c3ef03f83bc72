package loopwright.oracle.cpsat;

import java.util.List;

/** How far the faces of a box may be off: low and high of x, y, z, in halves of a hundredth; −1 along no axis is hung. */
record Doubt(List<Integer> low, List<Integer> high, int hungAxis) {

    /** In a part's frame {l0, l1, w0, w1, h0, h1}: what the local ends may be off by. */
    static List<Integer> whole(int... plusMinus) {
        return java.util.Arrays.stream(plusMinus).mapToObj(p -> 2 * p).toList();
    }
}
