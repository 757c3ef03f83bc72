package loopwright.workshop.drawing;

import java.util.Optional;

/** An upright rectangle, hundredths of a millimetre. */
public record Area(int leftHmm, int bottomHmm, int rightHmm, int topHmm) {

    /** Refuses a rectangle that is turned inside out. */
    public Area {
        if (leftHmm > rightHmm || bottomHmm > topHmm) {
            throw new IllegalArgumentException("an area from " + leftHmm + ", " + bottomHmm + " to " + rightHmm + ", "
                    + topHmm + " hundredths is inside out");
        }
    }

    /** The rectangle so wide and high round a point; odd sizes are a hundredth longer to the right and the top. */
    public static Area round(Dot centre, int widthHmm, int heightHmm) {
        int left = centre.xHmm() - widthHmm / 2;
        int bottom = centre.yHmm() - heightHmm / 2;
        return new Area(left, bottom, left + widthHmm, bottom + heightHmm);
    }

    /** The rectangle with these two opposite corners. */
    public static Area between(Dot one, Dot other) {
        return new Area(
                Math.min(one.xHmm(), other.xHmm()),
                Math.min(one.yHmm(), other.yHmm()),
                Math.max(one.xHmm(), other.xHmm()),
                Math.max(one.yHmm(), other.yHmm()));
    }

    /** Its width. */
    public int widthHmm() {
        return rightHmm - leftHmm;
    }

    /** Its height. */
    public int heightHmm() {
        return topHmm - bottomHmm;
    }

    /** Its middle, rounded towards the left and the bottom. */
    public Dot centre() {
        return new Dot(Math.floorDiv(leftHmm + rightHmm, 2), Math.floorDiv(bottomHmm + topHmm, 2));
    }

    /** Its area in square millimetres. */
    public double squareMm() {
        return widthHmm() / 100.0 * (heightHmm() / 100.0);
    }

    /** The rectangle larger by so much on every side; a negative number makes it smaller. */
    public Area grown(int byHmm) {
        return new Area(leftHmm - byHmm, bottomHmm - byHmm, rightHmm + byHmm, topHmm + byHmm);
    }

    /** The smallest rectangle that holds both. */
    public Area with(Area other) {
        return new Area(
                Math.min(leftHmm, other.leftHmm),
                Math.min(bottomHmm, other.bottomHmm),
                Math.max(rightHmm, other.rightHmm),
                Math.max(topHmm, other.topHmm));
    }

    /** What both have in common; empty where that is nothing. */
    public Optional<Area> common(Area other) {
        int left = Math.max(leftHmm, other.leftHmm);
        int bottom = Math.max(bottomHmm, other.bottomHmm);
        int right = Math.min(rightHmm, other.rightHmm);
        int top = Math.min(topHmm, other.topHmm);
        return left < right && bottom < top ? Optional.of(new Area(left, bottom, right, top)) : Optional.empty();
    }

    /** Whether the other lies in it; edges may touch. */
    public boolean holds(Area other) {
        return leftHmm <= other.leftHmm
                && bottomHmm <= other.bottomHmm
                && rightHmm >= other.rightHmm
                && topHmm >= other.topHmm;
    }

    /** Whether they have more than an edge in common. */
    public boolean meets(Area other) {
        return leftHmm < other.rightHmm
                && other.leftHmm < rightHmm
                && bottomHmm < other.topHmm
                && other.bottomHmm < topHmm;
    }

    /** The least distance of another rectangle's edges inside this one; negative where it pokes out. */
    public int insideHmm(Area other) {
        return Math.min(
                Math.min(other.leftHmm - leftHmm, rightHmm - other.rightHmm),
                Math.min(other.bottomHmm - bottomHmm, topHmm - other.topHmm));
    }
}
