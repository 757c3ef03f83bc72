package loopwright.workshop.finish;

import loopwright.catalog.standard.Finishing.Surface;

/**
 * Something that is painted.
 *
 * @param id of the panel, the cover, the insert or the body
 * @param areaHmm2 both sides, openings not taken off
 * @param mod the mod that it is painted for
 * @param hasMinutes whether the plan holds hands-on minutes for it
 */
public record PaintedPart(
        String id, String title, Kind kind, Surface surface, long areaHmm2, String mod, boolean hasMinutes) {

    /** What it is. */
    public enum Kind {
        /** A panel of the chassis. */
        PANEL,
        /** A sheet in place of a panel. */
        INSERT,
        /** A raised cover. */
        COVER,
        /** Another part that a mod makes. */
        BODY
    }

    /** The same with another area. */
    PaintedPart withArea(long newHmm2) {
        return new PaintedPart(id, title, kind, surface, newHmm2, mod, hasMinutes);
    }
}
