package loopwright.oracle.rank;

/** Mistakes that can be planted in the enumeration, one at a time. */
enum RankFault {
    /** None: the truth. */
    NONE,
    /** Builds equal in price and temperature count as one. */
    TIES_DROPPED,
    /** A mod set that fits stands for every larger one: only sets no smaller one of which fits are priced. */
    LEAST_SETS_ONLY,
    /** Whatever cannot keep the limits at full duty is not looked at slower. */
    FULL_DUTY_DECIDES,
    /** The exhaust radiator is taken to breathe room air. */
    EXHAUST_BREATHES_ROOM,
    /** Fans never blow out where no radiator hangs. */
    NO_BARE_ROWS,
    /** Only the cheapest parts of each room are looked at. */
    CHEAPEST_PARTS_ONLY
}
