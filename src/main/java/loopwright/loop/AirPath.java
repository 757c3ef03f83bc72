package loopwright.loop;

import java.util.OptionalDouble;

/**
 * What the air has to pass besides the radiator's core: panel, filter, a raised cover's outlet, one behind the other.
 *
 * <p>Each is a {@link ThinPlate} across the whole face, and their losses add; that they stand close together and
 * disturb each other is left out. Shares are of the fans' face.
 *
 * @param openShare open share of the panel, 0 (solid) to 1 (cut away)
 * @param filterShare open share of a filter in front of it, 0 to 1; absent: none
 * @param coverShare open share of the outlet of a raised cover, 0 to 1; absent: none
 */
public record AirPath(double openShare, OptionalDouble filterShare, OptionalDouble coverShare) {

    /** Nothing in the way. */
    public static final AirPath OPEN = ofPanel(1);

    /** Density of air that the fans' curves are given for, kg/m³; dry air at about 20 °C and 1 atm. */
    private static final double DENSITY_KG_PER_M3 = 1.2;

    /** Checks the shares. */
    public AirPath {
        check("openShare", openShare);
        filterShare.ifPresent(share -> check("filterShare", share));
        coverShare.ifPresent(share -> check("coverShare", share));
    }

    /** A panel alone, without filter or cover. */
    public static AirPath ofPanel(double openShare) {
        return new AirPath(openShare, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** Whether one of the plates is solid: no air passes. */
    public boolean isClosed() {
        return openShare == 0 || filterShare.orElse(1) == 0 || coverShare.orElse(1) == 0;
    }

    /**
     * Loss coefficient of all plates together, on the face's dynamic pressure, dimensionless.
     *
     * @throws IllegalStateException if the path is closed
     */
    public double lossCoefficient() {
        if (isClosed()) {
            throw new IllegalStateException("a closed path has no loss coefficient: " + this);
        }
        return ThinPlate.lossCoefficient(openShare)
                + ThinPlate.lossCoefficient(filterShare.orElse(1))
                + ThinPlate.lossCoefficient(coverShare.orElse(1));
    }

    /** Pressure it takes to drive air through at a face speed, Pa. */
    double resistancePa(double faceSpeedMPerS) {
        return lossCoefficient() * 0.5 * DENSITY_KG_PER_M3 * faceSpeedMPerS * faceSpeedMPerS;
    }

    private static void check(String name, double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException(name + " must be in [0, 1] but was " + share);
        }
    }
}
