package loopwright.catalog.read;

/** A place in a file: line and column, both from 1. */
public record Place(int line, int column) {
    /** The start of a file. */
    public static final Place START = new Place(1, 1);
}
