package loopwright.power.header;

import loopwright.catalog.part.Plug;
import loopwright.catalog.part.Pump;

/**
 * What a pump wants: a header of its own, or a plug of the supply and a header that only counts its turns.
 *
 * @param way where its current comes from
 * @param said whether its file says so
 */
public record PumpFeed(String pump, Way way, boolean said, int startMilliA) {

    /** Where a pump's current comes from. */
    public enum Way {
        /** A header of its own. */
        HEADER,
        /** A SATA plug of the supply. */
        SATA,
        /** The older 4-pin drive plug of the supply. */
        PERIPHERAL
    }

    /** Volts of the main rail, by definition. */
    private static final double TWELVE_V = 12;

    /** A pump's; one that does not say is taken to be fed by a SATA plug. */
    public static PumpFeed of(Pump pump, double startFactor) {
        double steadyA = pump.electric().powerW() / TWELVE_V;
        double startA = pump.feed().map(Pump.Feed::startCurrentA).orElse(0.0);
        Plug plug = pump.feed().map(Pump.Feed::plug).orElse(Plug.SATA);
        Way way = switch (plug) {
            case FAN_4 -> Way.HEADER;
            case PERIPHERAL_4 -> Way.PERIPHERAL;
            case MAIN_24, PROCESSOR_8, CARD_6, CARD_8, CARD_16, SATA -> Way.SATA;
        };
        return new PumpFeed(pump.id(), way, pump.feed().isPresent(), MilliAmps.starting(startA, steadyA, startFactor));
    }
}
