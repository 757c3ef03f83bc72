package loopwright.testing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Box;
import loopwright.catalog.basis.Heading;
import loopwright.catalog.basis.Point;
import loopwright.catalog.basis.Pose;
import loopwright.catalog.basis.SizeMm;
import loopwright.catalog.basis.Span;
import loopwright.quantity.Dimension;
import loopwright.quantity.Hundredths;
import loopwright.quantity.Known;

/** Millimetres as a test writes them, into the records' dimensions. */
public final class Mm {

    private Mm() {}

    /** A length that is exact: ± 0. At most two decimals. */
    public static Dimension mm(double lengthMm) {
        return mm(lengthMm, 0);
    }

    /** A length and how far it may be off. */
    public static Dimension mm(double lengthMm, double plusMinusMm) {
        return new Dimension(hmm(lengthMm), hmm(plusMinusMm), Known.MEASURED);
    }

    /** Hundredths of a millimetre; the last bits that a sum of lengths is off by do not count. */
    public static int hmm(double lengthMm) {
        return Hundredths.ofMm(BigDecimal.valueOf(lengthMm).setScale(6, RoundingMode.HALF_UP));
    }

    /** A span. */
    public static Span span(double fromMm, double toMm) {
        return new Span(mm(fromMm), mm(toMm));
    }

    /** A box in the chassis's frame. */
    public static Box box(Span xMm, Span yMm, Span zMm) {
        return new Box(xMm, yMm, zMm);
    }

    /** Length, width, height. */
    public static SizeMm size(double lengthMm, double widthMm, double heightMm) {
        return new SizeMm(mm(lengthMm), mm(widthMm), mm(heightMm));
    }

    /** A part that stands upright in its place: length from the front to the rear, width to the right. */
    public static Pose upright(double xMm, double yMm, double zMm) {
        return pose(xMm, yMm, zMm, Heading.REAR);
    }

    /** A part in its place with its length along y and its width to the right. */
    public static Pose pose(double xMm, double yMm, double zMm, Heading length) {
        return pose(new Point(mm(xMm), mm(yMm), mm(zMm)), length);
    }

    /** The same from a corner that may be off. */
    public static Pose pose(Point corner, Heading length) {
        if (length.axis() != Axis.Y) {
            throw new IllegalArgumentException("the length runs to the front or the rear but was " + length);
        }
        return new Pose(corner, length, Heading.RIGHT, Heading.UP);
    }
}
