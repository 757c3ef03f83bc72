package loopwright.loop.air;

import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.catalog.chassis.Mount.Where;

/**
 * What air has to pass at a mount besides the radiator's core: panel, filter, a raised cover's outlet, and the room outside.
 *
 * <p>Each lies behind the other and their losses add; that they stand close together and disturb each other is left out.
 *
 * <p><b>Source.</b> Plates: {@link ThinPlate}. Slots: orifice flow, contraction 0.6 (any text). Turns: a mitred right-angle
 * bend, K = 1.15 [Hooper1981], on the speed in the gap; entry from the open, K = 0.5.
 *
 * @param openShare open share of the panel over the fans' face, 0 (solid) to 1 (cut away)
 * @param where whether that share lies before the fans, or only round the edges of a closed face: then the air comes through
 *     slots of that area and turns in the depth outside
 * @param filterShare open share of a filter, above 0 to 1; absent: none
 * @param cover a raised cover's outlet
 * @param outsideDepthM free depth outside before a wall, a shelf, the desk or a closed face, m; air comes to the mount
 *     through the gap all round
 */
public record AirPath(
        double openShare, Where where, OptionalDouble filterShare, Optional<Outlet> cover, double outsideDepthM) {

    /**
     * How air leaves a raised cover: through its skin and through slots in its sides, side by side.
     *
     * @param skinShare open share of the skin over the fans' face, 0 for a solid skin
     * @param slotAreaM2 open area of the side slots
     * @param gapM height between the fans (or the panel) and the skin, in which air turns towards the slots
     */
    public record Outlet(double skinShare, double slotAreaM2, double gapM) {}

    /**
     * The fans' face.
     *
     * @param areaM2 of all fans' squares
     * @param perimeterM of the row
     */
    public record Face(double areaM2, double perimeterM) {}

    /**
     * The air and the holes it passes.
     *
     * @param panelHoleM width of a panel's and a skin's holes, m
     * @param filterHoleM width of a filter's meshes, m
     */
    public record Medium(double densityKgPerM3, double viscosityPaS, double panelHoleM, double filterHoleM) {}

    /** Contraction and turning of a mitred right-angle bend, dimensionless; [Hooper1981]. */
    private static final double TURN = 1.15;

    /** Entry from the open into a gap with sharp edges, dimensionless; [Idelchik1994]. */
    private static final double ENTRY = 0.5;

    /** Exit into the open, dimensionless: the whole dynamic pressure is lost, [Idelchik1994]. */
    private static final double EXIT = 1;

    /** Nothing in the way, in the open. */
    public static final AirPath OPEN =
            new AirPath(1, Where.FACE, OptionalDouble.empty(), Optional.empty(), Double.POSITIVE_INFINITY);

    /** Checks the shares. */
    public AirPath {
        check("openShare", openShare);
        filterShare.ifPresent(share -> check("filterShare", share));
        cover.ifPresent(c -> check("skinShare", c.skinShare()));
        if (!(outsideDepthM >= 0)) {
            throw new IllegalArgumentException("outside depth must be at least 0 m but was " + outsideDepthM);
        }
    }

    /** A panel alone, in the open. */
    public static AirPath ofPanel(double openShare) {
        return new AirPath(openShare, Where.FACE, OptionalDouble.empty(), Optional.empty(), Double.POSITIVE_INFINITY);
    }

    /** What the whole path resists. */
    public AirResistance resistance(Face face, Medium medium) {
        AirResistance all = where == Where.EDGES
                ? slots(openShare * face.areaM2(), medium).then(gap(TURN, face, outsideDepthM, medium))
                : plate(openShare, medium.panelHoleM(), face, medium)
                        .then(gap(TURN + ENTRY, face, outsideDepthM, medium));
        if (filterShare.isPresent()) {
            all = all.then(plate(filterShare.getAsDouble(), medium.filterHoleM(), face, medium));
        }
        return cover.isPresent() ? all.then(outlet(cover.get(), face, medium)) : all;
    }

    /**
     * What an empty mount resists: the same path, and the air's own speed lost on the way in and out of the face.
     */
    public AirResistance passive(Face face, Medium medium) {
        return resistance(face, medium).then(new AirResistance(0, dynamic(ENTRY + EXIT, face.areaM2(), medium)));
    }

    /** A gap of some area in the case's skin: orifice flow. */
    public static AirResistance leak(double areaM2, Medium medium) {
        return slots(areaM2, medium);
    }

    private static AirResistance outlet(Outlet cover, Face face, Medium medium) {
        AirResistance skin = plate(cover.skinShare(), medium.panelHoleM(), face, medium);
        if (skin.quadraticPaS2PerM6() == 0) {
            return AirResistance.NONE; // no skin at all
        }
        AirResistance sides = slots(cover.slotAreaM2(), medium).then(gap(TURN, face, cover.gapM(), medium));
        return skin.beside(sides);
    }

    /** A plate across the face: its quadratic loss, and below that the friction of slow air in small holes. */
    private static AirResistance plate(double share, double holeM, Face face, Medium medium) {
        if (share == 0) {
            return AirResistance.CLOSED;
        }
        if (share == 1) {
            return AirResistance.NONE;
        }
        double linear = ThinPlate.slowLossPaSPerM(share, holeM, medium.viscosityPaS()) / face.areaM2();
        return new AirResistance(linear, dynamic(ThinPlate.lossCoefficient(share), face.areaM2(), medium));
    }

    private static AirResistance slots(double areaM2, Medium medium) {
        return areaM2 == 0
                ? AirResistance.CLOSED
                : new AirResistance(0, dynamic(1 / (CoreFace.DISCHARGE * CoreFace.DISCHARGE), areaM2, medium));
    }

    private static AirResistance gap(double coefficient, Face face, double depthM, Medium medium) {
        if (depthM == Double.POSITIVE_INFINITY) {
            return AirResistance.NONE;
        }
        return depthM == 0
                ? AirResistance.CLOSED
                : new AirResistance(0, dynamic(coefficient, depthM * face.perimeterM(), medium));
    }

    private static double dynamic(double coefficient, double areaM2, Medium medium) {
        return coefficient * medium.densityKgPerM3() / (2 * areaM2 * areaM2);
    }

    private static void check(String name, double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException(name + " must be in [0, 1] but was " + share);
        }
    }
}
