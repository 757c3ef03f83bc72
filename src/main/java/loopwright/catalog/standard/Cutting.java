package loopwright.catalog.standard;

import java.util.List;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.chassis.Panel;
import loopwright.quantity.Hundredths;

/**
 * How the workshop cuts sheet: what has to stay, how far a cut may be off, joints and stock.
 *
 * @param stay what has to stay of a sheet
 * @param off how far a cut may be off
 * @param joint what an insert panel or a pane is made smaller by
 * @param portHoleMm hole for a fitting and its grommet
 * @param windowLapMm how far a pane reaches over the edge of its window
 * @param stock sheets that inserts are cut from
 */
public record Cutting(
        Stay stay,
        Off off,
        Joint joint,
        @Limits(min = 10, max = 60) double portHoleMm,
        @Limits(min = 3, max = 40) double windowLapMm,
        List<Stock> stock) {

    /** Copies. */
    public Cutting {
        stock = List.copyOf(stock);
    }

    /**
     * What has to stay of a sheet.
     *
     * @param cornerRadiusMm radius of inside corners, drilled first
     * @param ringWebMm metal between two fan rings
     * @param rimLeastMm metal from a cut to a fold, at least
     * @param rimGoodMm the same, where nothing is in the way
     * @param slotWebMm metal between two slots
     * @param slotLongestMm longest slot for a screw
     * @param panelPercent share of a panel's flat that has to stay
     */
    public record Stay(
            @Limits(min = 3, max = 10) double cornerRadiusMm,
            @Limits(min = 1, max = 30) double ringWebMm,
            @Limits(min = 1, max = 40) double rimLeastMm,
            @Limits(min = 1, max = 40) double rimGoodMm,
            @Limits(min = 1, max = 30) double slotWebMm,
            @Limits(min = 5, max = 80) double slotLongestMm,
            @Limits(min = 0, max = 100) double panelPercent) {}

    /**
     * How far a cut may be off.
     *
     * @param cutMm the edge from the line, after filing
     * @param placingMm the paper from where it belongs
     */
    public record Off(
            @Limits(min = 0, max = 5) double cutMm,
            @Limits(min = 0, max = 5) double placingMm) {}

    /**
     * What a sheet that goes into an opening is made smaller by, at each edge.
     *
     * @param fitMm to get it in
     * @param filmMm paint on one face or edge, a whole system of coats
     * @param swingK between the coldest and the warmest it meets
     * @param sawMm what a cut takes of the stock
     */
    public record Joint(
            @Limits(min = 0, max = 5) double fitMm,
            @Limits(min = 0, max = 1) double filmMm,
            @Limits(min = 0, max = 100) double swingK,
            @Limits(min = 0, max = 10) double sawMm) {}

    /** A sheet that the workshop buys. */
    public record Stock(
            Panel.Material material,
            @Limits(min = 50, max = 3000) double lengthMm,
            @Limits(min = 50, max = 3000) double widthMm) {}

    /** A length in hundredths of a millimetre, half up. */
    public static int hmm(double lengthMm) {
        return (int) Math.round(lengthMm * Hundredths.PER_MM);
    }
}
