package loopwright.fit.rules;

import java.util.Locale;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Memory;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Reservoir;
import loopwright.catalog.part.Supply;

/** The single parts a build has one of. */
public enum Role {
    /** Main board. */
    BOARD(Board.class),
    /** Processor. */
    PROCESSOR(Processor.class),
    /** Graphics card. */
    CARD(GraphicsCard.class),
    /** Memory kit. */
    MEMORY(Memory.class),
    /** Processor block. */
    BLOCK(Block.class),
    /** Power supply. */
    SUPPLY(Supply.class),
    /** Pump, with or without a reservoir of its own. */
    PUMP(Pump.class),
    /** Reservoir of its own, where the pump has none. */
    RESERVOIR(Reservoir.class);

    private final Class<? extends Part> kind;

    Role(Class<? extends Part> kind) {
        this.kind = kind;
    }

    /** The kind of part that fills it. */
    public Class<? extends Part> kind() {
        return kind;
    }

    /** Its word in wishes and ids. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
