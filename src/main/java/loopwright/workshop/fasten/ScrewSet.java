package loopwright.workshop.fasten;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import loopwright.catalog.part.Screw;

/**
 * The screws of a joint.
 *
 * @param clearanceHoleHmm bore in what they go through, ISO 273 medium
 * @param choice the screw, or why not
 * @param warnings what to look at before they go in
 */
public record ScrewSet(
        Joint joint, int clearanceHoleHmm, LengthWindow window, LengthChoice choice, List<String> warnings) {

    /** Copies. */
    public ScrewSet {
        warnings = List.copyOf(warnings);
    }

    /** The screw, where one fits. */
    public Optional<Screw> findScrew() {
        return choice instanceof LengthChoice.Fits fits ? Optional.of(fits.screw()) : Optional.empty();
    }

    /** From the screw's end to what it must not touch, nominal; empty where no screw fits. */
    public OptionalInt leftHmm() {
        return findScrew()
                .map(s -> OptionalInt.of(window.reachHmm() - Stock.lengthHmm(s)))
                .orElse(OptionalInt.empty());
    }

    /** The same with every spread against us. */
    public OptionalInt leftWorstHmm() {
        return findScrew()
                .map(s -> OptionalInt.of(window.reachHmm()
                        - Stock.lengthHmm(s)
                        - window.offHmm()
                        - s.lengthMm().plusMinusHmm()))
                .orElse(OptionalInt.empty());
    }
}
