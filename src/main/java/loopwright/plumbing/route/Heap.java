package loopwright.plumbing.route;

import java.util.Arrays;

/** A binary heap of longs, smallest first: a cost in the high half, a state in the low. Its state is what it is for. */
final class Heap {

    private static final int STATE_BITS = 32;

    private long[] keys = new long[1024];
    private int size;

    boolean isEmpty() {
        return size == 0;
    }

    void add(int cost, int state) {
        if (size == keys.length) {
            keys = Arrays.copyOf(keys, 2 * size);
        }
        long key = (long) cost << STATE_BITS | state;
        int at = size++;
        while (at > 0 && keys[(at - 1) / 2] > key) {
            keys[at] = keys[(at - 1) / 2];
            at = (at - 1) / 2;
        }
        keys[at] = key;
    }

    /** Takes the smallest; its cost is in the high half. */
    long take() {
        long least = keys[0];
        long last = keys[--size];
        int at = 0;
        while (2 * at + 1 < size) {
            int child = 2 * at + 1;
            if (child + 1 < size && keys[child + 1] < keys[child]) {
                child++;
            }
            if (keys[child] >= last) {
                break;
            }
            keys[at] = keys[child];
            at = child;
        }
        keys[at] = last;
        return least;
    }

    static int cost(long key) {
        return (int) (key >>> STATE_BITS);
    }

    static int state(long key) {
        return (int) key;
    }
}
