package loopwright.fit;

import loopwright.quantity.Dimension;

/**
 * Room that is kept free for a plug, a fitting, a hand or moving blades: somebody decided how much it is, so that it is
 * never more or less than it says. It has no spread, whatever a file gives.
 */
final class Allowance {

    private Allowance() {}

    /** The same length without a spread; unknown stays unknown. */
    static Dimension of(Dimension room) {
        return new Dimension(room.valueHmm(), 0, room.known());
    }
}
