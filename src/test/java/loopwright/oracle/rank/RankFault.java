package loopwright.oracle.rank;

/** Mistakes that can be planted in the enumeration, one at a time. */
enum RankFault {
    /** None: the truth. */
    NONE,
    /** Tight places are allowed whatever the brief says. */
    TIGHT_ALLOWED,
    /** Builds equal in price and temperature count as one. */
    TIES_DROPPED,
    /** A mod set that fits stands for every larger one: only sets no smaller one of which fits are priced. */
    LEAST_SETS_ONLY,
    /** Whatever cannot keep the limits at full duty is not looked at slower. */
    FULL_DUTY_DECIDES,
    /** Each duty counts as a build of its own. */
    EVERY_DUTY_COUNTS,
    /** The list by noise shows what fans come to as fast as they may turn. */
    FAST_IN_THE_LIST_BY_NOISE,
    /** Exactly one mount blows out. */
    ONE_BLOWS_OUT,
    /** What blows out is solved as if it breathed the room's air. */
    EXHAUST_BREATHES_ROOM,
    /** Fans blow only where a radiator hangs. */
    NO_BARE_ROWS,
    /** A bare row only blows out. */
    ROWS_BLOW_OUT_ONLY,
    /** No air passes an empty mount. */
    EMPTY_MOUNTS_CLOSED,
    /** Mods change nothing at an empty mount. */
    EMPTY_MOUNTS_AS_DELIVERED,
    /** Only the case's usual leaks count, not its own. */
    USUAL_LEAKS_ONLY,
    /** A panel that is open round its edges counts as open before the fans. */
    EDGES_ARE_FACES,
    /** Filters are forgotten. */
    NO_FILTERS,
    /** The gap between fans and a cover's skin is the cover's whole height. */
    COVERS_ARE_EMPTY,
    /** What fills the room outside is forgotten. */
    UNLIMITED_OUTSIDE,
    /** Air goes round radiators with a gasket too. */
    GASKETS_SEAL_NOTHING,
    /** No frame masks a core. */
    NOTHING_MASKS,
    /** Blocks take all of a part's heat. */
    BLOCKS_TAKE_ALL,
    /** What a supply loses stays out of the case. */
    SUPPLIES_KEEP_THEIR_HEAT,
    /** The coolant passes all blocks one after the other. */
    BLOCKS_IN_SERIES,
    /** Every machine stands at the sea. */
    AT_THE_SEA,
    /** Limits of processor, card and case air are not looked at. */
    PARTS_MAY_BURN,
    /** Radiators and panels add nothing to the sound of fans. */
    FANS_SOUND_ALONE,
    /** Only the cheapest parts of each room are looked at. */
    CHEAPEST_PARTS_ONLY,
    /** Copper and aluminium may share a loop. */
    METALS_IGNORED,
    /** What a card's block is made of is not looked at. */
    CARD_BLOCK_OF_ANY_METAL,
    /** A supply's fan makes no sound. */
    SUPPLIES_ARE_SILENT,
    /** A supply is always as loud as under full load. */
    SUPPLIES_AT_FULL_LOAD,
    /** Between two points a supply is as loud as at the nearer one. */
    NEAREST_NOISE_POINT,
    /** Fittings are forgotten. */
    NO_FITTINGS,
    /** A reservoir of its own wants no fittings. */
    NO_FITTINGS_AT_RESERVOIRS,
    /** A reservoir of its own wants elbows too. */
    ELBOWS_AT_RESERVOIRS,
    /** Every straight fitting takes every tube. */
    FITTINGS_TAKE_ANY_TUBE,
    /** Elbows of aluminium are as good as others. */
    ALUMINIUM_ELBOWS,
    /** Zinc in the coolant is no matter. */
    ZINC_TAKEN,
    /** The brief's choice of fittings is not looked at. */
    ANY_FITTINGS,
    /** Fittings are always there. */
    FITTINGS_AT_ONCE
}
