package loopwright.catalog.chassis;

import java.util.List;
import loopwright.catalog.basis.Limits;
import loopwright.quantity.Dimension;

/** One modification of the chassis: what it takes, what it shows, what it changes. */
public record Mod(String id, String title, Kind kind, Rules rules, Work work, Look look, Effect effect) {

    /** What is done. */
    public enum Kind {
        /** Take out a removable. */
        TAKE_OUT,
        /** Raise a cover over a panel. */
        RAISE_COVER,
        /** Open a panel. */
        OPEN_PANEL,
        /** Drill a hole pattern. */
        DRILL_PATTERN,
        /** Change a bracket. */
        CHANGE_BRACKET,
        /** Make new places for drives. */
        MOVE_DRIVE,
        /** Fit an insert panel. */
        FIT_INSERT,
        /** Cut a window. */
        CUT_WINDOW,
        /** Change or take out a filter. */
        CHANGE_FILTER,
        /** Longer feet. */
        LONGER_FEET,
        /** Cut a hole for cables. */
        CUT_HOLE
    }

    /** Mods it needs (all of them) and mods it cannot go with. */
    public record Rules(List<String> requires, List<String> excludes) {}

    /**
     * What it takes.
     *
     * @param labourMin hands-on minutes, paint not included
     * @param paintMin hands-on minutes of paint for the parts that show, 0 if none
     * @param waitDays days it adds that nobody works (cure, outside work)
     * @param materialCents material, without bought covers
     * @param risk 1 (low) to 5 (high)
     */
    public record Work(
            @Limits(min = 1, max = 3000) int labourMin,
            @Limits(min = 0, max = 3000) int paintMin,
            @Limits(min = 0, max = 90) int waitDays,
            @Limits(min = 0, max = 1_000_000) long materialCents,
            @Limits(min = 1, max = 5) int risk) {}

    /** What it shows, and whether it can be undone. */
    public record Look(
            @Limits(min = 0, max = 20) int visibleCuts,
            @Limits(min = 0, max = 20) int hiddenCuts,
            WayBack wayBack,
            @Limits(min = 0, max = 100) Dimension heightAddedMm) {}

    /** Whether it can be undone. */
    public enum WayBack {
        /** Yes. */
        YES,
        /** Partly. */
        PARTLY,
        /** No. */
        NO
    }

    /**
     * What it changes; absent lists change nothing.
     *
     * @param removes removables that are gone
     * @param adds bodies that are there
     * @param opensPlaces places that exist only with it
     * @param closesPlaces places that are gone
     * @param seats hole patterns it makes
     * @param covers raised covers it fits (at most one a mount)
     * @param airways changes of what air passes
     * @param inserts sheets that take a panel's place
     * @param routingHoles holes for cables that it makes
     */
    public record Effect(
            List<String> removes,
            List<Inside.Obstruction> adds,
            List<String> opensPlaces,
            List<String> closesPlaces,
            List<ModSeat> seats,
            List<RaisedCover> covers,
            List<Airway> airways,
            List<Insert> inserts,
            List<Wiring.RoutingHole> routingHoles) {

        /** An effect that makes no hole for cables. */
        public Effect(
                List<String> removes,
                List<Inside.Obstruction> adds,
                List<String> opensPlaces,
                List<String> closesPlaces,
                List<ModSeat> seats,
                List<RaisedCover> covers,
                List<Airway> airways,
                List<Insert> inserts) {
            this(removes, adds, opensPlaces, closesPlaces, seats, covers, airways, inserts, List.of());
        }
    }

    /** A sheet that takes the place of the panel at a mount, and is the screw seat there. */
    public record Insert(
            String mount,
            Panel.Material material,
            @Limits(min = 0.5, max = 12) Dimension thicknessMm) {}
}
