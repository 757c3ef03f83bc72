package loopwright.catalog.check;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Memory;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.Supply;
import loopwright.catalog.part.Tube;

/** What a brief has to find a part for. A reservoir is needed only with some pumps, so it is no role here. */
enum Role {
    BOARD("parts.board", Board.class, b -> Optional.of(b.parts().board())),
    PROCESSOR("parts.processor", Processor.class, b -> Optional.of(b.parts().processor())),
    CARD("parts.card", GraphicsCard.class, b -> Optional.of(b.parts().card())),
    MEMORY("parts.memory", Memory.class, b -> Optional.of(b.parts().memory())),
    BLOCK("parts.processor_block", Block.class, b -> Optional.of(b.parts().processorBlock())),
    SUPPLY("parts.supply", Supply.class, b -> b.parts().supply()),
    RADIATOR("loop.radiators", Radiator.class, b -> b.loop().radiators()),
    FAN("loop.fans", Fan.class, b -> b.loop().fans()),
    PUMP("loop.pumps", Pump.class, b -> b.loop().pumps()),
    TUBE("loop.tube", Tube.class, b -> Optional.of(b.loop().tube())),
    COOLANT("loop.coolant", Coolant.class, b -> Optional.of(b.loop().coolant()));

    private final String path;
    private final Class<? extends Part> kind;

    @SuppressWarnings("ImmutableEnumChecker")
    private final Function<Brief, Optional<Choice>> wish;

    Role(String path, Class<? extends Part> kind, Function<Brief, Optional<Choice>> wish) {
        this.path = path;
        this.kind = kind;
        this.wish = wish;
    }

    String path() {
        return path;
    }

    Class<? extends Part> kind() {
        return kind;
    }

    Optional<Choice> wish(Brief brief) {
        return wish.apply(brief);
    }

    /** How fast a part is, for the kinds that say so. */
    static OptionalInt performanceOf(Part part) {
        if (part instanceof Processor p) {
            return OptionalInt.of(p.performance());
        }
        return part instanceof GraphicsCard g ? OptionalInt.of(g.performance()) : OptionalInt.empty();
    }
}
