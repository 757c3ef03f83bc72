package loopwright.catalog.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.standard.Standards;
import loopwright.quantity.Hundredths;

/**
 * The holes of a pattern about its centre: four a fan.
 *
 * <p>Units: hundredths of a millimetre, doubled, so that halves stay whole.
 *
 * @param lengthwiseDoubled distances from the centre along the mount, ascending
 * @param sidewaysDoubled distance from the centre across it
 */
record ScrewHoles(List<Integer> lengthwiseDoubled, int sidewaysDoubled) {

    /** Diameter of a hole for a fan screw, mm / 100; common practice, no source. */
    static final int HOLE_DIAMETER_HMM = 450;

    /** The holes, if the standards have the fan size. */
    static Optional<ScrewHoles> of(Pattern pattern, Standards standards) {
        return standards.fans().stream()
                .filter(f -> f.sizeMm() == pattern.sizeMm() && !f.holePitchMm().isUnknown())
                .findFirst()
                .map(f -> of(pattern, f.holePitchMm().valueHmm()));
    }

    private static ScrewHoles of(Pattern pattern, int pitchHmm) {
        int sizeHmm = Hundredths.ofMm(pattern.sizeMm());
        List<Integer> lengthwise = new ArrayList<>();
        for (int i = 0; i < pattern.fans(); i++) {
            int centre = (2 * i - (pattern.fans() - 1)) * sizeHmm;
            lengthwise.add(centre - pitchHmm);
            lengthwise.add(centre + pitchHmm);
        }
        return new ScrewHoles(List.copyOf(lengthwise), pitchHmm);
    }

    /** The outermost hole along the mount. */
    int reachDoubled() {
        return lengthwiseDoubled.get(lengthwiseDoubled.size() - 1);
    }
}
