package loopwright.workshop.template;

import java.util.Optional;
import loopwright.catalog.chassis.Airway;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.catalog.standard.Cutting;
import loopwright.fit.MountFrame;
import loopwright.quantity.Dimension;
import loopwright.quantity.Hundredths;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Dot;

/** What is cut for the air of one mount: rings, strips and windows, under a cover too. */
record CutHoles(Setting setting, MountFrame frame, PanelView view, Holes out) {

    private Mount mount() {
        return frame.mount();
    }

    private Optional<Setting.Hung> hung() {
        return setting.on(mount().id());
    }

    /** Whether a sheet takes the panel's place there. */
    boolean hasInsert() {
        return setting.mods().stream()
                .anyMatch(m ->
                        m.effect().inserts().stream().anyMatch(i -> i.mount().equals(mount().id())));
    }

    /** Whether screws sit in a bracket behind the panel. */
    private boolean inBracket() {
        return mount().insetMm().isUnknown() || mount().insetMm().valueHmm() > 0;
    }

    private boolean inFlange() {
        return out.lids().stream()
                .anyMatch(l ->
                        l.raised().mount().equals(mount().id()) && l.raised().over() == RaisedCover.Over.WINDOW);
    }

    /**
     * Where cuts go: what hangs, else the seat that the mod makes, else the largest seat as delivered; under a cover's
     * middle, where the seat reaches that far.
     */
    private Optional<Seated> place(Mod mod) {
        if (hung().isPresent()) {
            return hung().map(Seated::of);
        }
        Optional<Seated> made = mod.effect().seats().stream()
                .filter(s -> s.mount().equals(mount().id()))
                .flatMap(s -> Seated.of(s.seat(), hung()).stream())
                .findFirst();
        return made.or(() -> mount().seats().stream()
                .flatMap(s -> Seated.of(s, underCover(s)).stream())
                .max((a, b) -> a.pattern().compareTo(b.pattern()))
                .map(Seated::empty));
    }

    /** A pattern as if it hung under the middle of the mount's cover. */
    private Optional<Setting.Hung> underCover(Mount.Seat seat) {
        return out.lids().stream()
                .map(Lid::raised)
                .filter(r -> r.mount().equals(mount().id()))
                .findFirst()
                .map(r -> new Setting.Hung(
                        mount().id(),
                        seat.pattern(),
                        r.lengthwiseMm().valueHmm(),
                        r.sidewaysMm().valueHmm(),
                        Optional.empty(),
                        Optional.empty()));
    }

    /** What a mod opens. */
    void airway(Mod mod, Airway airway) {
        Optional<Seated> place = place(mod);
        if (place.isEmpty()) {
            out.note(Finding.warning(mod.id() + ": no seat on " + mount().id() + " says where its cut goes"));
            return;
        }
        if (!place.get().hangs()) {
            out.note(Finding.note(
                    "nothing hangs on " + mount().id() + ": cuts lie at the middle of the cover or of the seat "
                            + place.get().pattern()));
        }
        switch (airway.cut().orElseThrow()) {
            case RINGS -> rings(mod, place.get(), airway.cutMm());
            case STRIP -> strip(mod, place.get(), airway);
            case FULL -> full(mod, place.get());
        }
    }

    private int fanRingHmm(Seated place) {
        return place.fan(setting.catalog().standards()).ringMm().valueHmm();
    }

    /** Never larger than the fan's own ring: past it is its frame, and air would go round the fan. */
    private void rings(Mod mod, Seated place, Optional<Dimension> cut) {
        int web = Cutting.hmm(setting.cutting().stay().ringWebMm());
        int said = cut.filter(d -> !d.isUnknown())
                .map(Dimension::valueHmm)
                .orElse(place.pattern().sizeMm() * Hundredths.PER_MM - web);
        for (Dot dot : place.fans(frame, view)) {
            Hole.Tag tag = new Hole.Tag("", Hole.Purpose.RING, mod.id(), "ring of a fan");
            out.holes().add(new Hole.Round(tag, dot, Math.min(said, fanRingHmm(place))));
        }
    }

    private void strip(Mod mod, Seated place, Airway airway) {
        int width = airway.cutMm()
                .filter(d -> !d.isUnknown())
                .map(Dimension::valueHmm)
                .orElse(0);
        if (width == 0) {
            out.note(Finding.warning(mod.id() + ": the width of its strip is not known: measure, then draw again"));
            return;
        }
        window(mod, "strip between the screw rows", around(place, reachHmm(place), width));
    }

    /** How long the fans' rings reach from end to end. */
    private int reachHmm(Seated place) {
        return (place.pattern().fans() - 1) * place.pattern().sizeMm() * Hundredths.PER_MM + fanRingHmm(place);
    }

    private void full(Mod mod, Seated place) {
        int size = place.pattern().sizeMm() * Hundredths.PER_MM;
        if (hasInsert()) {
            Area area = around(place, place.pattern().fans() * size, size);
            window(mod, "opening for the insert panel", area);
        } else if (inBracket() || inFlange()) {
            window(mod, "window before the fans", around(place, reachHmm(place), fanRingHmm(place)));
        } else {
            int width = Math.min(fanRingHmm(place), betweenScrewsHmm(place));
            window(mod, "window between the screw rows", around(place, reachHmm(place), width));
            out.note(
                    Finding.note(
                            mod.id() + " opens " + mount().id() + " before the fans, and no insert, cover or"
                                    + " bracket is their seat: the window stays between the screw rows, "
                                    + Hundredths.text(width)
                                    + " wide, so that the screws keep two sheet thicknesses; the air was worked out for all of it open"));
        }
    }

    /** The widest opening that leaves two sheet thicknesses beside the screws. */
    private int betweenScrewsHmm(Seated place) {
        int hole = Clearance.holeHmm(setting.catalog().standards(), hung().flatMap(Setting.Hung::thread));
        int pitch = place.fan(setting.catalog().standards()).holePitchMm().valueHmm();
        return pitch - hole - 4 * frame.panel().thicknessMm().valueHmm();
    }

    /** What is cut under a raised cover. */
    void underLid(Lid lid) {
        boolean cut = out.holes().stream()
                .anyMatch(h -> h.tag().purpose() == Hole.Purpose.RING || h.tag().purpose() == Hole.Purpose.WINDOW);
        Optional<Seated> place = place(lid.mod());
        if (place.isEmpty()) {
            out.note(Finding.warning(
                    lid.mod().id() + ": no seat on " + mount().id() + " says what is cut under its cover"));
            return;
        }
        if (lid.raised().over() == RaisedCover.Over.WINDOW) {
            int ring = fanRingHmm(place.get());
            boolean across = frame.lengthwise() == view.right().axis();
            int length = reachHmm(place.get());
            Area area = Area.round(lid.outline().centre(), across ? length : ring, across ? ring : length);
            window(lid.mod(), "window under the raised cover", area);
        } else if (!cut) {
            rings(lid.mod(), place.get(), Optional.empty());
        }
        new PortHoles(setting, frame, view, out).of(lid, hung());
    }

    private Area around(Seated place, int longHmm, int wideHmm) {
        boolean across = frame.lengthwise() == view.right().axis();
        return Area.round(place.dot(frame, view, 0, 0), across ? longHmm : wideHmm, across ? wideHmm : longHmm);
    }

    private void window(Mod mod, String what, Area area) {
        int corner = Cutting.hmm(setting.cutting().stay().cornerRadiusMm());
        out.holes().add(new Hole.Window(new Hole.Tag("", Hole.Purpose.WINDOW, mod.id(), what), area, corner));
    }
}
