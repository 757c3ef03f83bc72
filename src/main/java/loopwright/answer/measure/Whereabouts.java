package loopwright.answer.measure;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.Catalog;
import loopwright.catalog.part.Part;
import loopwright.catalog.read.FileKind;
import loopwright.catalog.standard.Practice.Instrument;

/** Where lengths of a catalogue are taken, and which of its instruments can take them. */
final class Whereabouts {

    private final Catalog catalog;

    Whereabouts(Catalog catalog) {
        this.catalog = catalog;
    }

    /** Where it is taken. */
    Spots.Spot of(Measurable measurable) {
        return Spots.of(kind(measurable.ids().get(0)), measurable.path());
    }

    /** The instruments that can take it, roughest first. */
    List<Instrument> instruments(Measurable measurable) {
        return InstrumentChoice.suitable(
                catalog.practice().measuring().instruments(),
                of(measurable).takes(),
                Math.abs(measurable.now().valueHmm()));
    }

    private String kind(String id) {
        Optional<Part> part = Optional.ofNullable(catalog.parts().get(id));
        return part.map(p -> FileKind.ofPart(p.getClass()).one()).orElse(id);
    }
}
