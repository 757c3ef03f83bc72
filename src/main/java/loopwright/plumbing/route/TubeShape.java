package loopwright.plumbing.route;

import java.util.Optional;

/**
 * What a tube and its fittings ask of room, and what they count. Hundredths of a millimetre.
 *
 * @param radius half the tube's outside
 * @param bends what a bend asks
 * @param straight the fitting that holds it
 * @param elbow the right-angle elbow between port and that fitting, where there is one
 */
public record TubeShape(int radius, Bends bends, Fitting straight, Optional<Fitting> elbow) {

    /**
     * What bends ask.
     *
     * @param radius least, of the tube's axis
     * @param stub straight tube between a fitting and a bend
     * @param asTube how much tube a bend counts as
     * @param fromFans how far tube stays from a fan's open faces
     */
    public record Bends(int radius, int stub, int asTube, int fromFans) {}

    /**
     * A fitting.
     *
     * @param height over the face it sits on; of an elbow, to the axis of what leaves it
     * @param radius room round its axis
     * @param asTube how much tube it counts as
     */
    public record Fitting(int height, int radius, int asTube) {}

    /** The least straight tube between a fitting and where the axes of a right-angle bend cross. */
    int endLeg() {
        return bends.radius() + bends.stub();
    }

    /** The least distance between where the axes of two bends cross: each takes its radius × tan 45°. */
    int middleLeg() {
        return 2 * bends.radius();
    }
}
