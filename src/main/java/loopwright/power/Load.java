package loopwright.power;

import java.math.BigDecimal;
import java.math.RoundingMode;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
import loopwright.catalog.standard.Practice;

/**
 * What one part draws from the supply at worst.
 *
 * @param kind what it is
 * @param id the part's id; for the small parts together, {@code misc}
 * @param milliwatts at least 0
 */
public record Load(Kind kind, String id, long milliwatts) {

    /** Kinds of load, in the order in which they are told. */
    public enum Kind {
        /** Processor, at worst. */
        PROCESSOR,
        /** Graphics card, at worst. */
        CARD,
        /** The board itself. */
        BOARD,
        /** One drive. */
        DRIVE,
        /** Pump, at full speed. */
        PUMP,
        /** Memory, fans and small parts. */
        MISC
    }

    /** Decimals of a watt that are kept: milliwatts. */
    private static final int DECIMALS = 3;

    /** Checks the sign. */
    public Load {
        if (milliwatts < 0) {
            throw new IllegalArgumentException("load of " + id + " must be at least 0 mW but was " + milliwatts);
        }
    }

    /** A processor's. */
    public static Load of(Processor processor) {
        return new Load(
                Kind.PROCESSOR, processor.id(), milliwatts(processor.heat().worstW()));
    }

    /** A card's. */
    public static Load of(GraphicsCard card) {
        return new Load(Kind.CARD, card.id(), milliwatts(card.power().worstW()));
    }

    /** A board's. */
    public static Load of(Board board) {
        return new Load(Kind.BOARD, board.id(), milliwatts(board.electric().heatW()));
    }

    /** A drive's. */
    public static Load of(Drive drive) {
        return new Load(Kind.DRIVE, drive.id(), milliwatts(drive.heatW()));
    }

    /** A pump's. */
    public static Load of(Pump pump) {
        return new Load(Kind.PUMP, pump.id(), milliwatts(pump.electric().powerW()));
    }

    /** What a part of a build draws at worst, mW; 0 for parts that draw nothing of their own. */
    public static long worstMilliwatts(Part part) {
        if (part instanceof Processor processor) {
            return of(processor).milliwatts();
        }
        if (part instanceof GraphicsCard card) {
            return of(card).milliwatts();
        }
        if (part instanceof Board board) {
            return of(board).milliwatts();
        }
        return part instanceof Pump pump ? of(pump).milliwatts() : 0;
    }

    /** The small parts'. */
    public static Load ofSmallParts(Practice.Heat practice) {
        return new Load(Kind.MISC, "misc", milliwatts(practice.miscHeatW()));
    }

    /** Watts as a file writes them, in whole milliwatts, half rounded up. */
    public static long milliwatts(double watts) {
        return BigDecimal.valueOf(watts)
                .movePointRight(DECIMALS)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
    }
}
