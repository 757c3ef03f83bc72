package loopwright.fit;

import java.util.Optional;
import loopwright.catalog.basis.SizeMm;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Memory;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Supply;
import loopwright.quantity.Dimension;

/** Parts of which the one measure that builders ask about is another, and nothing else. Unit: hundredths of a millimetre. */
public final class Resized {

    private Resized() {}

    /** A part that is that much larger (or smaller, below 0) in its measure: the memory's height, the card's and the supply's length. */
    public static Optional<Part> by(Part part, int growthHmm) {
        if (part instanceof Memory memory) {
            return Optional.of(taller(memory, growthHmm));
        }
        if (part instanceof GraphicsCard card) {
            return Optional.of(longer(card, growthHmm));
        }
        return part instanceof Supply supply ? Optional.of(longer(supply, growthHmm)) : Optional.empty();
    }

    /** That measure of a part. */
    public static Optional<Dimension> measure(Part part) {
        if (part instanceof Memory memory) {
            return Optional.of(memory.heightMm());
        }
        if (part instanceof GraphicsCard card) {
            return Optional.of(card.body().lengthMm());
        }
        return part instanceof Supply supply ? Optional.of(supply.body().lengthMm()) : Optional.empty();
    }

    static GraphicsCard longer(GraphicsCard was, int growthHmm) {
        GraphicsCard.Body body = was.body();
        return new GraphicsCard(
                was.id(),
                was.title(),
                was.variantOf(),
                was.buy(),
                was.cooling(),
                new GraphicsCard.Body(
                        more(body.lengthMm(), growthHmm),
                        body.thicknessMm(),
                        body.heightMm(),
                        body.topRoomMm(),
                        body.topRoomLengthMm()),
                was.power(),
                was.performance(),
                was.electric(),
                was.ports(),
                was.massG());
    }

    static Supply longer(Supply was, int growthHmm) {
        SizeMm size = was.body();
        return new Supply(
                was.id(),
                was.title(),
                was.variantOf(),
                was.buy(),
                was.form(),
                new SizeMm(more(size.lengthMm(), growthHmm), size.widthMm(), size.heightMm()),
                was.plugRoomMm(),
                was.output(),
                was.rails(),
                was.cables(),
                was.noise(),
                was.massG());
    }

    static Memory taller(Memory was, int growthHmm) {
        return new Memory(
                was.id(),
                was.title(),
                was.variantOf(),
                was.buy(),
                was.generation(),
                more(was.heightMm(), growthHmm),
                was.modules(),
                was.capacityGb(),
                was.massG());
    }

    private static Dimension more(Dimension was, int growthHmm) {
        return new Dimension(was.valueHmm() + growthHmm, was.plusMinusHmm(), was.known(), was.distribution());
    }
}
