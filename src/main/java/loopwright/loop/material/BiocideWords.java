package loopwright.loop.material;

import java.util.Collection;
import java.util.Locale;
import java.util.stream.Collectors;
import loopwright.catalog.part.Coolant;

/** Biocides as sentences name them. */
final class BiocideWords {

    private BiocideWords() {}

    static String of(Collection<Coolant.Biocide> biocides) {
        return biocides.stream()
                .map(b -> b.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .collect(Collectors.joining(" and "));
    }
}
