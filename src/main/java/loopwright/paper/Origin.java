package loopwright.paper;

import loopwright.catalog.Catalog;
import loopwright.catalog.brief.Brief;

/**
 * What an answer came from.
 *
 * @param program name and version
 * @param catalog the catalogue's version: a digest of its files
 * @param brief the brief's id
 */
public record Origin(String program, String catalog, String brief) {

    /** The origin of an answer to a brief. */
    public static Origin of(String program, Catalog catalog, Brief brief) {
        return new Origin(program, catalog.version(), brief.id());
    }

    /** The line under every answer for people. */
    public String line() {
        return "brief " + brief + ", catalogue " + catalog + ", " + program;
    }
}
