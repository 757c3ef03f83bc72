package loopwright.power.cable;

import loopwright.catalog.part.Supply;
import loopwright.catalog.standard.Cabling;
import loopwright.catalog.standard.Cabling.PlugSize;

/**
 * What sleeving one cable takes: cord on each wire, plug to plug.
 *
 * @param conductors wires of each piece
 * @param cordM cord in all, m
 * @param shrinks pieces of heat-shrink where it is done with them; without, none
 */
public record Sleeving(int conductors, double cordM, int shrinks) {

    private static final double MM_PER_M = 1000;

    /** A whole cable with all its plugs. */
    public static Sleeving of(Supply.Cable cable, PlugSize plug, Cabling.Sleeve sleeve) {
        double wireMm =
                cable.lengthMm() + (cable.plugs() - 1) * cable.toNextMm().orElse(0.0);
        double eachMm = wireMm + cable.plugs() * sleeve.allowanceMm();
        return new Sleeving(
                plug.conductors(),
                plug.conductors() * eachMm / MM_PER_M,
                plug.conductors() * cable.plugs() * sleeve.shrinksPerPiece());
    }
}
