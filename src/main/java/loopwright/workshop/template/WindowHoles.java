package loopwright.workshop.template;

import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Box;
import loopwright.catalog.basis.Point;
import loopwright.catalog.basis.Span;
import loopwright.catalog.chassis.Inside;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Wiring;
import loopwright.catalog.standard.Cutting;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Dot;

/** What mods take out of a panel away from its mounts: windows to look through, and holes for cables. */
record WindowHoles(Setting setting, PanelView view, Holes out) {

    /** How far a point may lie from a wall and still mean the sheet there. */
    private static final int NEAR_HMM = 200;

    /** Collects. */
    void collect() {
        for (Mod mod : setting.mods()) {
            if (mod.kind() == Mod.Kind.CUT_WINDOW) {
                rims(mod);
            }
            for (Wiring.RoutingHole hole : mod.effect().routingHoles()) {
                if (isHere(hole.at())) {
                    cable(mod, hole);
                }
            }
        }
    }

    private void rims(Mod mod) {
        for (Inside.Obstruction rim : mod.effect().adds()) {
            for (Box box : rim.boxes()) {
                pane(box).ifPresent(pane -> {
                    int lap = Cutting.hmm(setting.cutting().windowLapMm());
                    int corner = Cutting.hmm(setting.cutting().stay().cornerRadiusMm());
                    out.holes()
                            .add(new Hole.Window(
                                    new Hole.Tag("", Hole.Purpose.WINDOW, mod.id(), "window"),
                                    pane.grown(-lap),
                                    corner));
                    out.note(Finding.note("the window of " + mod.id() + " is the rim's box in the catalogue, smaller by"
                            + " the lap all round: measure the pane you have before you cut"));
                });
            }
        }
    }

    /** What a rim's box covers of this panel, if it stands against it and has room for a window. */
    Optional<Area> pane(Box box) {
        Axis normal = view.panel().face().normal();
        Span depth = box.along(normal);
        int wall = view.panel().face().isHigh()
                ? PanelView.size(setting.chassis().shell().interior(), normal)
                : 0;
        int face = view.panel().face().isHigh()
                ? depth.to().valueHmm()
                : depth.from().valueHmm();
        int least = 2
                * Cutting.hmm(setting.cutting().windowLapMm()
                        + setting.cutting().stay().cornerRadiusMm());
        return view.area(
                        Optional.of(box.along(view.right().axis())),
                        Optional.of(box.along(view.up().axis())))
                .filter(a -> face == wall && a.widthHmm() > least && a.heightHmm() > least);
    }

    private boolean isHere(Point at) {
        Axis normal = view.panel().face().normal();
        int wall = view.panel().face().isHigh()
                ? PanelView.size(setting.chassis().shell().interior(), normal)
                : 0;
        return !at.along(normal).isUnknown() && Math.abs(at.along(normal).valueHmm() - wall) <= NEAR_HMM;
    }

    private void cable(Mod mod, Wiring.RoutingHole hole) {
        out.holes().add(hole(mod.id(), hole, true));
        if (hole.longMm().valueHmm() != hole.shortMm().valueHmm()) {
            out.note(Finding.note(
                    "the catalogue does not say which way the long side of " + hole.id() + " lies: drawn across"));
        }
    }

    /** A hole for cables, its long side across or upright. */
    Hole hole(String mod, Wiring.RoutingHole hole, boolean across) {
        Dot dot = view.dot(
                view.right().axis(),
                hole.at().along(view.right().axis()).valueHmm(),
                hole.at().along(view.up().axis()).valueHmm());
        Hole.Tag tag = new Hole.Tag("", Hole.Purpose.CABLE, mod, hole.title());
        int wide = hole.longMm().valueHmm();
        int high = hole.shortMm().valueHmm();
        if (wide == high) {
            return new Hole.Round(tag, dot, wide);
        }
        int corner = Math.min(high / 2, Cutting.hmm(setting.cutting().stay().cornerRadiusMm()));
        return new Hole.Window(tag, Area.round(dot, across ? wide : high, across ? high : wide), corner);
    }
}
