package loopwright.workshop.template;

import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Span;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.standard.Cutting;
import loopwright.fit.MountFrame;
import loopwright.quantity.Dimension;
import loopwright.quantity.Hundredths;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Dot;

/** What an insert panel has in it: a ring for each fan, and the screws of what hangs on it. */
record InsertHoles(Setting setting, MountFrame frame, PanelView view, Holes out) {

    /** Collects; the insert goes into this opening, and keeps a rim round its rings as every sheet does. */
    void collect(Area opening) {
        Optional<Setting.Hung> hung = setting.on(frame.mount().id());
        for (Mod mod : setting.mods()) {
            mod.effect().seats().stream()
                    .filter(s -> s.mount().equals(frame.mount().id()))
                    .flatMap(s -> Seated.of(s.seat(), hung).stream())
                    .filter(place -> hung.isEmpty() || place.hangs())
                    .forEach(place -> fans(mod, place, opening, hung));
        }
    }

    private void fans(Mod mod, Seated place, Area opening, Optional<Setting.Hung> hung) {
        int ring = ringHmm(place, opening);
        for (Dot dot : place.fans(frame, view)) {
            out.holes().add(new Hole.Round(tag(Hole.Purpose.RING, mod, "ring of a fan, or mesh"), dot, ring));
        }
        String what = Clearance.words(hung.flatMap(Setting.Hung::thread)) + ", " + place.pattern();
        int hole = Clearance.holeHmm(setting.catalog().standards(), hung.flatMap(Setting.Hung::thread));
        for (Dot dot : place.screws(frame, view, setting.catalog().standards())) {
            out.holes().add(new Hole.Round(tag(Hole.Purpose.SCREW, mod, what), dot, hole));
        }
        out.note(Finding.note("how the insert is held in its opening is not in the catalogue: strips behind the sheet,"
                + " or its own screws, are not drawn"));
    }

    /** As large as the fan's ring, the web between two rings and the rim to the insert's edge allow; whole millimetres. */
    private int ringHmm(Seated place, Area opening) {
        Cutting.Stay stay = setting.cutting().stay();
        int least = Math.min(opening.widthHmm(), opening.heightHmm());
        Panel sheet = view.panel();
        Panel.Material surround = frame.panel().material();
        int joint = Joint.of(setting, least, sheet.material(), surround).bareHmm();
        int rim = least - 2 * (joint + Cutting.hmm(stay.rimLeastMm()));
        int web = place.pattern().sizeMm() * Hundredths.PER_MM - Cutting.hmm(stay.ringWebMm());
        int fan = place.fan(setting.catalog().standards()).ringMm().valueHmm();
        return Math.min(fan, Math.min(rim, web)) / Hundredths.PER_MM * Hundredths.PER_MM;
    }

    private static Hole.Tag tag(Hole.Purpose purpose, Mod mod, String what) {
        return new Hole.Tag("", purpose, mod.id(), what);
    }

    /** The view of a sheet whose flat is an outline. */
    static PanelView edged(PanelView view, Area outline) {
        Panel was = view.panel();
        Optional<Span> across = Optional.of(span(view.right(), outline.leftHmm(), outline.rightHmm()));
        Optional<Span> up = Optional.of(span(view.up(), outline.bottomHmm(), outline.topHmm()));
        Panel.Patch flat = new Panel.Patch(
                pick(view, Axis.X, across, up), pick(view, Axis.Y, across, up), pick(view, Axis.Z, across, up));
        Panel sheet = new Panel(was.id(), was.face(), was.thicknessMm(), was.material(), flat, was.features());
        return new PanelView(sheet, view.right(), view.up(), view.walls(), view.words());
    }

    private static Optional<Span> pick(PanelView view, Axis axis, Optional<Span> across, Optional<Span> up) {
        if (axis == view.right().axis()) {
            return across;
        }
        return axis == view.up().axis() ? up : Optional.empty();
    }

    private static Span span(PanelView.Way way, int lowHmm, int highHmm) {
        int one = way.of(lowHmm);
        int other = way.of(highHmm);
        return new Span(Dimension.ofHmm(Math.min(one, other)), Dimension.ofHmm(Math.max(one, other)));
    }
}
