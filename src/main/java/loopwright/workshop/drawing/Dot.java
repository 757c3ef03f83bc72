package loopwright.workshop.drawing;

/** A point of a drawing, hundredths of a millimetre: x to the right, y up. */
public record Dot(int xHmm, int yHmm) {

    /** The point moved by so much. */
    public Dot plus(int byXHmm, int byYHmm) {
        return new Dot(xHmm + byXHmm, yHmm + byYHmm);
    }

    /** How far it is to another point, hundredths of a millimetre. */
    public double distanceHmm(Dot other) {
        double x = (double) xHmm - other.xHmm;
        double y = (double) yHmm - other.yHmm;
        return Math.sqrt(x * x + y * y);
    }
}
