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
    ONE_LESS_ONLY,
    /** 12 V rails must bring a milliwatt more than they are asked. */
    TWELVE_VOLT_OFF_BY_ONE,
    /** 12 V rails want the headroom of the whole too. */
    TWELVE_VOLT_HEADROOM,
    /** What a 12 V rail brings is rounded to milliamperes first. */
    MILLIAMPERES_FIRST,
    /** A drive draws more from 5 V and 3.3 V than in all. */
    LOW_OVER_HEAT,
    /** A processor's own peak is not looked at. */
    OWN_PEAK_IGNORED,
    /** A card's 6-pin plugs are forgotten. */
    SIX_PIN_FORGOTTEN,
    /** Two plugs on a cable are two cables. */
    CABLES_BY_PLUGS,
    /** Small cards want cables of their own too. */
    CABLES_OF_SMALL_CARDS,
    /** A 6-pin plug wants a cable of its own. */
    SIX_PIN_WANTS_A_CABLE,
    /** 12 V is not looked at. */
    TWELVE_VOLT_IGNORED("electric.twelve-volt"),
    /** 5 V and 3.3 V are not looked at. */
    LOW_RAILS_IGNORED("electric.low-rails"),
    /** Surges are not looked at. */
    SURGE_IGNORED("electric.surge"),
    /** Old supplies need no reserve. */
    SURGE_RESERVE_IGNORED("electric.surge-reserve"),
    /** A supply's processor plugs are not looked at. */
    PROCESSOR_PLUGS_IGNORED("electric.processor-plugs"),
    /** A board's processor plugs are not looked at. */
    BOARD_PLUGS_IGNORED("electric.board-processor-plugs"),
    /** Card plugs are not looked at. */
    CARD_PLUGS_IGNORED("electric.card-plugs"),
    /** How a 16-pin plug is coded is not looked at. */
    CODING_IGNORED("electric.card-coding"),
    /** Cables are not looked at. */
    CABLES_IGNORED("electric.card-cables");

    private final String ruleLeftOut;

    Fault() {
        this("");
    }

    Fault(String ruleLeftOut) {
        this.ruleLeftOut = ruleLeftOut;
    }

    /** The rule of electrics that this forgets; empty for other mistakes. */
    public String ruleLeftOut() {
        return ruleLeftOut;
    }
}
