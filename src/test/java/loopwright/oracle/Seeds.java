package loopwright.oracle;

import java.util.stream.LongStream;

/** The default seeds. */
final class Seeds {
    /** Tiny cases that brute force and Choco alone must agree on. */
    static final int TINY = 160;

    private Seeds() {}

    static LongStream tiny() {
        return LongStream.range(0, TINY);
    }
}
