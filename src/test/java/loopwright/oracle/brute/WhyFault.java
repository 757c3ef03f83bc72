package loopwright.oracle.brute;

/** Mistakes that can be planted in {@link BruteWhy}, one at a time. */
public enum WhyFault {
    /** None: the truth. */
    NONE,
    /** Every stack hangs a hundredth further along than it does. */
    POSITION_OFF_BY_ONE,
    /** A forbidden mod is nothing that is broken. */
    FORBIDDEN_IGNORED,
    /** Two roles at a time may be filled from outside the brief's choice. */
    TWO_ROLES,
    /** Stacks may poke through walls. */
    WALL_FORGOTTEN,
    /** An unknown dimension is nothing that is broken. */
    KNOWN_IGNORED,
    /** Stacks never meet each other. */
    STACKS_NEVER_MEET,
    /** A part that has no place is nothing that is broken. */
    PLACE_IGNORED,
    /** 12 V is never too little. */
    TWELVE_VOLT_FORGOTTEN
}
