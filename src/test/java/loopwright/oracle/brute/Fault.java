package loopwright.oracle.brute;

/** Mistakes that can be planted, one at a time. */
public enum Fault {
    /** None: the truth. */
    NONE,
    /** Each pair of bodies is given positions of its own. */
    PAIRS_ONLY,
    /** Each pair of stacks is given positions of its own; matters with three stacks. */
    STACK_PAIRS_ONLY,
    /** Each stack is put at the first position it has alone. */
    FIRST_POSITION,
    /** Positions every whole millimetre from the start of a slot. */
    MM_GRID,
    /** Fans ask for one hundredth less than they need. */
    NEED_OFF_BY_ONE,
    /** A cover over a window leaves the panel's seats. */
    WINDOW_KEEPS_SEATS,
    /** Rooms must not overlap rooms. */
    ROOM_WITH_ROOM,
    /** Tight places are allowed whatever the brief says. */
    TIGHT_ALLOWED,
    /** How far an axis may be off is taken from the next one. */
    SPREAD_OF_NEXT_AXIS,
    /** A place is tight below 1.99 mm. */
    TIGHT_OFF_BY_ONE,
    /** Takes a mod set to fit only if a maximal one above it does. */
    MONOTONE_FROM_ABOVE,
    /** Takes a set as needed if no set with one mod less fits. */
    ONE_LESS_ONLY
}
