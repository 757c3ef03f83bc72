package loopwright.workshop.assembly;

/** A builder's usual turn, small first; it only decides between orders that are possible. Common practice, no source. */
final class Turns {

    static final int BOARD = 0;
    static final int MEMORY = 1;
    static final int BLOCK = 2;
    static final int SUPPLY = 3;
    static final int DRIVE = 4;
    static final int PLUG = 5;
    static final int STACK = 6;
    static final int PUMP = 7;
    static final int CARD = 8;
    static final int RUN = 9;
    static final int COVER = 10;
    static final int TRIM = 11;

    private Turns() {}
}
