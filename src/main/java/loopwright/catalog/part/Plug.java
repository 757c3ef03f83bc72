package loopwright.catalog.part;

/** Plugs of a machine's wiring, by what the trade calls them. */
public enum Plug {
    /** The board's, 24 pins. */
    MAIN_24,
    /** The processor's, 8 pins (4 + 4). */
    PROCESSOR_8,
    /** A card's, 6 pins. */
    CARD_6,
    /** A card's, 8 pins (6 + 2). */
    CARD_8,
    /** A card's, 16 pins. */
    CARD_16,
    /** A drive's, or what else is fed like one. */
    SATA,
    /** The older 4-pin drive plug: pumps, adaptors. */
    PERIPHERAL_4,
    /** A fan's or pump's on a header, 4 pins. */
    FAN_4
}
