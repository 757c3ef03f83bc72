package loopwright.answer.mass;

/**
 * Something of a machine that weighs, as a point.
 *
 * @param what as the builder calls it
 * @param massKg negative where something is taken away
 */
public record Mass(String what, double massKg, Spot at) {

    /** A point, mm in the chassis frame. */
    public record Spot(double xMm, double yMm, double zMm) {}
}
