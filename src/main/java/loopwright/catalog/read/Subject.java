package loopwright.catalog.read;

/**
 * Whom a problem is about.
 *
 * @param file as the user would type it
 * @param label the item, like {@code pump "p-12"}; empty for the file as a whole
 */
public record Subject(String file, String label) {

    /** A problem at a place of this file. */
    public Problem problem(Place at, String field, String found, String allowed, String hint) {
        return new Problem(file, at.line(), at.column(), label, field, found, allowed, hint);
    }
}
