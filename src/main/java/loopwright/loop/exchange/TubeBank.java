package loopwright.loop.exchange;

import loopwright.catalog.part.Radiator;

/**
 * The flat tubes of a whole radiator, as the coolant sees them.
 *
 * <p><b>Units.</b> SI.
 *
 * @param gapM inner short side of a tube
 * @param widthM inner long side of a tube
 * @param lengthM of a tube
 * @param count all tubes, in all rows
 * @param perPass tubes side by side in one pass, as a mean
 * @param wallM thickness of the wall
 * @param conductivityWPerMK of the wall
 */
record TubeBank(
        double gapM,
        double widthM,
        double lengthM,
        double count,
        double perPass,
        double wallM,
        double conductivityWPerMK) {

    private static final double M_PER_MM = 1e-3;

    /**
     * Where the tubes are.
     *
     * @param acrossM width of the core's face across the tubes
     * @param lengthM of the core's face along the tubes
     * @param depthM of one tube, outside, along the air's way
     */
    record Place(double acrossM, double lengthM, double depthM, int rows) {}

    /** Refuses tubes without room for coolant. */
    TubeBank {
        if (!(gapM > 0 && widthM >= gapM && wallM > 0)) {
            throw new IllegalArgumentException("tube walls of " + wallM + " m leave " + gapM + " m by " + widthM
                    + " m for the coolant; the first must be above 0 and the second no smaller");
        }
    }

    static TubeBank of(Radiator.Tubes tubes, Place place, double pitchM, double conductivityWPerMK) {
        double wallM = tubes.wallMm() * M_PER_MM;
        double thicknessM = tubes.thicknessMm() * M_PER_MM;
        // One fin more than tubes: n tubes and n + 1 fins fill the width.
        double side = Math.max(1, Math.rint((place.acrossM - (pitchM - thicknessM)) / pitchM));
        double count = side * place.rows;
        return new TubeBank(
                thicknessM - 2 * wallM,
                place.depthM - 2 * wallM,
                place.lengthM,
                count,
                count / tubes.passes(),
                wallM,
                conductivityWPerMK);
    }

    /** Inner wall of all tubes, m². */
    double wallAreaM2() {
        return 2 * (gapM + widthM) * lengthM * count;
    }

    /** Hydraulic diameter of one tube, m. */
    double hydraulicDiameterM() {
        return 2 * gapM * widthM / (gapM + widthM);
    }

    /** Free section of one pass, m². */
    double passAreaM2() {
        return gapM * widthM * perPass;
    }
}
