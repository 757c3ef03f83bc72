package loopwright.fit;

import loopwright.catalog.basis.Pattern;
import loopwright.quantity.Dimension;

/**
 * A radiator stack by its dimensions: what can hang on a mount. Parts of equal dimensions give one shape.
 *
 * <p>A class, not a record, so that its text is made once: searches compare shapes millions of times.
 */
public final class Shape implements Comparable<Shape> {

    private final RadiatorOutline outline;
    private final Dimension fanThickness;
    private final Arrangement arrangement;
    private final PortEnd portEnd;
    private final String textWithoutEnd;
    private final String text;

    /** A shape. */
    public Shape(RadiatorOutline outline, Dimension fanThickness, Arrangement arrangement, PortEnd portEnd) {
        this.outline = outline;
        this.fanThickness = fanThickness;
        this.arrangement = arrangement;
        this.portEnd = portEnd;
        this.textWithoutEnd = outline.text() + "/" + fanThickness.valueHmm() + "/" + arrangement;
        this.text = textWithoutEnd + "/" + portEnd;
    }

    /** Its radiator's dimensions. */
    public RadiatorOutline outline() {
        return outline;
    }

    /** How thick its fans are. */
    public Dimension fanThickness() {
        return fanThickness;
    }

    /** What lies where. */
    public Arrangement arrangement() {
        return arrangement;
    }

    /** Which end the ports are at. */
    public PortEnd portEnd() {
        return portEnd;
    }

    /** Its hole pattern. */
    public Pattern pattern() {
        return outline.pattern();
    }

    /** Radiator thickness, hundredths of a millimetre. */
    public int thicknessHmm() {
        return outline.thickness().valueHmm();
    }

    /** Everything by value: equal texts are equal shapes. */
    public String text() {
        return text;
    }

    /** The shape with its port end left out: what turning the radiator round does not change. */
    public String textWithoutEnd() {
        return textWithoutEnd;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Shape shape && text.equals(shape.text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    @Override
    public int compareTo(Shape other) {
        return text.compareTo(other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
