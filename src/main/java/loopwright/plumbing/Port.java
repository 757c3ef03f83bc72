package loopwright.plumbing;

import loopwright.catalog.basis.Heading;
import loopwright.catalog.basis.PartPort.Way;
import loopwright.plumbing.route.Where;

/**
 * A port of a placed part.
 *
 * @param at the middle of its face, in chassis coordinates
 * @param out the way tube leaves it
 * @param assumed whether the catalogue does not say where it is
 */
public record Port(String part, String id, Where at, Heading out, Way way, boolean assumed) {

    /** Whether coolant may come in here. */
    public boolean mayBeIn() {
        return way != Way.OUT;
    }

    /** Whether coolant may go out here. */
    public boolean mayBeOut() {
        return way != Way.IN;
    }

    /** What it is called on a screen. */
    public String name() {
        return part + " " + id;
    }
}
