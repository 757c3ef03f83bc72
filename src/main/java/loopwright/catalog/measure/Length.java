package loopwright.catalog.measure;

import loopwright.catalog.read.Range;
import loopwright.quantity.Dimension;

/**
 * One length of one item of the catalogue.
 *
 * @param id of the item
 * @param path of the fields as in the file; elements of lists by their id, else by their number from 1; the ends of a
 *     span are {@code from} and {@code to}
 * @param dimension its value as it is now
 * @param range the values that its field may have, mm
 */
public record Length(String id, String path, Dimension dimension, Range range) {

    /** What the length is called everywhere: {@code short-tower.shell.interior.height_mm}. */
    public String address() {
        return id + "." + path;
    }

    /** The same length with another value. */
    Length with(Dimension other) {
        return new Length(id, path, other, range);
    }
}
