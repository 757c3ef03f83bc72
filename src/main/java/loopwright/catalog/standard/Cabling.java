package loopwright.catalog.standard;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.part.Plug;

/**
 * What is reckoned with where cables are laid; common practice, no published source, plug sizes and bundles from memory.
 *
 * @param way where a cable may lie
 * @param bundle what bundles take
 * @param sleeve what sleeving takes
 * @param drives what is usual at drives
 * @param plugs one a kind of plug
 */
public record Cabling(Way way, Bundle bundle, Sleeve sleeve, DriveFixing drives, List<PlugSize> plugs) {

    /**
     * Where a cable may lie.
     *
     * @param slackPercent of a way, on top of it
     * @param keepMm what a cable's middle keeps from bodies and walls: no way goes through a gap narrower than twice that
     * @param grommetLipMm what a grommet takes of a cut hole, of each of its two dimensions
     * @param boardEdgeMm strip along the board's edge that cables may lie over
     * @param boardAirMm height over the rest of the board where none is laid
     * @param straightMm what the 16-pin plug's wires go straight before any bend
     */
    public record Way(
            @Limits(min = 0, max = 100) double slackPercent,
            @Limits(min = 0.5, max = 20) double keepMm,
            @Limits(min = 0, max = 20) double grommetLipMm,
            @Limits(min = 0, max = 60) double boardEdgeMm,
            @Limits(min = 0, max = 300) double boardAirMm,
            @Limits(min = 0, max = 100) double straightMm) {}

    /**
     * What bundles take.
     *
     * @param fillShareMax of a hole's free opening that bundles may fill
     * @param flatBelowMm depth behind the tray under which only flat cables lie there
     * @param packing volume that coiled cable takes over the volume of its bundle
     */
    public record Bundle(
            @Limits(min = 0.1, max = 1) double fillShareMax,
            @Limits(min = 0, max = 60) double flatBelowMm,
            @Limits(min = 1, max = 6) double packing) {}

    /**
     * What sleeving takes.
     *
     * @param allowanceMm cord on top of each piece of wire, for both its ends
     * @param shrinksPerPiece pieces of heat-shrink on each piece of wire, where they are used
     */
    public record Sleeve(
            @Limits(min = 0, max = 300) double allowanceMm,
            @Limits(min = 0, max = 4) int shrinksPerPiece) {}

    /**
     * What is usual at drives.
     *
     * @param screws of a drive
     * @param sheetMm of a cage or bracket that its screws go through
     * @param stillAirW heat from which a drive wants moving air
     */
    public record DriveFixing(
            @Limits(min = 2, max = 8) int screws,
            @Limits(min = 0.3, max = 5) double sheetMm,
            @Limits(min = 0, max = 50) double stillAirW) {}

    /**
     * A kind of plug and its cable.
     *
     * @param longMm long side of the opening that it passes
     * @param shortMm short side of it
     * @param deepMm how deep it is, seated
     * @param conductors of its cable
     * @param bundleMm diameter of its cable
     */
    public record PlugSize(
            Plug plug,
            @Limits(min = 1, max = 100) double longMm,
            @Limits(min = 1, max = 100) double shortMm,
            @Limits(min = 1, max = 60) double deepMm,
            @Limits(min = 1, max = 40) int conductors,
            @Limits(min = 0.5, max = 40) double bundleMm) {}

    /** Copies, and refuses a plug that is listed twice. */
    public Cabling {
        plugs = List.copyOf(plugs);
        if (plugs.stream().map(PlugSize::plug).distinct().count() < plugs.size()) {
            throw new IllegalArgumentException("plugs must list each plug once");
        }
    }

    /** A plug's sizes, where they are listed. */
    public Optional<PlugSize> find(Plug plug) {
        return plugs.stream().filter(p -> p.plug() == plug).findFirst();
    }
}
