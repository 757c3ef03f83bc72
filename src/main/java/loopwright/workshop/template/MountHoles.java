package loopwright.workshop.template;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.chassis.Airway;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.ModSeat;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.catalog.standard.Cutting;
import loopwright.fit.MountFrame;
import loopwright.quantity.Dimension;
import loopwright.quantity.Hundredths;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Dot;

/** What the mods take out of a panel at one mount. */
final class MountHoles {

    private final Setting setting;
    private final MountFrame frame;
    private final PanelView view;
    private final Mount mount;
    private final Optional<Setting.Hung> hung;
    private final Holes out;

    /** Collects into {@code out}. */
    MountHoles(Setting setting, MountFrame frame, PanelView view, Holes out) {
        this.setting = setting;
        this.frame = frame;
        this.view = view;
        this.mount = frame.mount();
        this.hung = setting.on(mount.id());
        this.out = out;
    }

    /** Collects. */
    void collect() {
        for (Mod mod : setting.mods()) {
            mod.effect().covers().stream()
                    .filter(c -> c.mount().equals(mount.id()))
                    .forEach(c -> out.lids().add(Lid.of(setting, mod, c, frame, view)));
        }
        for (Mod mod : setting.mods()) {
            mod.effect().airways().stream()
                    .filter(a -> a.mount().equals(mount.id()) && a.cut().isPresent())
                    .forEach(a -> airway(mod, a));
        }
        List<Lid> lids = lids();
        lids.forEach(this::underLid);
        setting.mods()
                .forEach(mod -> mod.effect().seats().stream()
                        .filter(s -> s.mount().equals(mount.id()))
                        .forEach(s -> seat(mod, s)));
        hung.ifPresent(this::standing);
        lids.forEach(lid -> new Fixings(setting, view, out).of(lid));
    }

    private List<Lid> lids() {
        return out.lids().stream()
                .filter(l -> l.raised().mount().equals(mount.id()))
                .toList();
    }

    private boolean hasInsert() {
        return setting.mods().stream()
                .anyMatch(m ->
                        m.effect().inserts().stream().anyMatch(i -> i.mount().equals(mount.id())));
    }

    private static boolean overWindow(Mod mod, String mount) {
        return mod.effect().covers().stream()
                .anyMatch(c -> c.mount().equals(mount) && c.over() == RaisedCover.Over.WINDOW);
    }

    /** Where cuts go: what hangs, else the seat that the mod makes, else the largest seat as delivered. */
    Optional<Seated> place(Optional<Mod> mod) {
        if (hung.isPresent()) {
            return hung.map(Seated::of);
        }
        Optional<Seated> made = mod.stream()
                .flatMap(m -> m.effect().seats().stream())
                .filter(s -> s.mount().equals(mount.id()))
                .flatMap(s -> Seated.of(s.seat(), hung).stream())
                .findFirst();
        return made.or(() -> mount.seats().stream()
                .flatMap(s -> Seated.of(s, hung).stream())
                .max((a, b) -> a.pattern().compareTo(b.pattern())));
    }

    private void airway(Mod mod, Airway airway) {
        Optional<Seated> place = place(Optional.of(mod));
        if (place.isEmpty()) {
            out.note(Finding.warning(mod.id() + ": no seat on " + mount.id() + " says where its cut goes"));
            return;
        }
        if (!place.get().hangs()) {
            out.note(Finding.note("nothing hangs on " + mount.id() + ": cuts lie at the middle of the seat "
                    + place.get().pattern()));
        }
        switch (airway.cut().orElseThrow()) {
            case RINGS -> rings(mod, place.get(), airway.cutMm());
            case STRIP -> strip(mod, place.get(), airway);
            case FULL -> full(mod, place.get());
        }
    }

    private int ringHmm(Seated place) {
        int web = Cutting.hmm(setting.cutting().stay().ringWebMm());
        int ring = place.fan(setting.catalog().standards()).ringMm().valueHmm();
        return Math.min(ring, place.pattern().sizeMm() * Hundredths.PER_MM - web);
    }

    private void rings(Mod mod, Seated place, Optional<Dimension> cut) {
        int diameter = cut.filter(d -> !d.isUnknown()).map(Dimension::valueHmm).orElseGet(() -> ringHmm(place));
        for (Dot dot : place.fans(frame, view)) {
            out.holes().add(new Hole.Round(tag(Hole.Purpose.RING, mod, "ring of a fan"), dot, diameter));
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
        return (place.pattern().fans() - 1) * place.pattern().sizeMm() * Hundredths.PER_MM
                + place.fan(setting.catalog().standards()).ringMm().valueHmm();
    }

    private void full(Mod mod, Seated place) {
        if (hasInsert()) {
            int size = place.pattern().sizeMm() * Hundredths.PER_MM;
            window(
                    mod,
                    "opening for the insert panel",
                    around(place, place.pattern().fans() * size, size));
            return;
        }
        int ring = place.fan(setting.catalog().standards()).ringMm().valueHmm();
        window(mod, "window before the fans", around(place, reachHmm(place), ring));
        if (lids().isEmpty()) {
            out.note(Finding.warning(mod.id() + " cuts away everything before the fans on " + mount.id()
                    + ", the metal under their screws too; the catalogue does not say what is the seat then (mesh in a"
                    + " frame, strips): have it ready before cutting"));
        }
    }

    private void underLid(Lid lid) {
        boolean cut = out.holes().stream()
                .anyMatch(h -> h.tag().purpose() == Hole.Purpose.RING || h.tag().purpose() == Hole.Purpose.WINDOW);
        Optional<Seated> place = place(Optional.of(lid.mod()));
        if (place.isEmpty()) {
            out.note(Finding.warning(
                    lid.mod().id() + ": no seat on " + mount.id() + " says what is cut under its cover"));
            return;
        }
        if (lid.raised().over() == RaisedCover.Over.WINDOW) {
            int ring = place.get().fan(setting.catalog().standards()).ringMm().valueHmm();
            boolean across = frame.lengthwise() == view.right().axis();
            int length = reachHmm(place.get());
            Area area = Area.round(lid.outline().centre(), across ? length : ring, across ? ring : length);
            window(lid.mod(), "window under the raised cover", area);
        } else if (!cut) {
            rings(lid.mod(), place.get(), Optional.empty());
        }
        new PortHoles(setting, frame, view, out).of(lid, hung);
    }

    private Area around(Seated place, int longHmm, int wideHmm) {
        boolean across = frame.lengthwise() == view.right().axis();
        return Area.round(place.dot(frame, view, 0, 0), across ? longHmm : wideHmm, across ? wideHmm : longHmm);
    }

    private void window(Mod mod, String what, Area area) {
        out.holes()
                .add(new Hole.Window(
                        tag(Hole.Purpose.WINDOW, mod, what),
                        area,
                        Cutting.hmm(setting.cutting().stay().cornerRadiusMm())));
    }

    private void seat(Mod mod, ModSeat made) {
        if (overWindow(mod, mount.id())) {
            out.note(Finding.note("the screws of " + made.seat().pattern() + " on " + mount.id()
                    + " sit in the flange of the cover: no holes for them in the sheet"));
            return;
        }
        if (hasInsert()) {
            return;
        }
        if (mount.insetMm().isUnknown() || mount.insetMm().valueHmm() > 0) {
            out.note(Finding.note("the seat on " + mount.id() + " is in a bracket inside the panel: no holes for "
                    + made.seat().pattern() + " in the sheet"));
            return;
        }
        Optional<Seated> place = Seated.of(made.seat(), hung);
        if (place.isEmpty()) {
            out.note(Finding.warning(mod.id() + ": where " + made.seat().pattern() + " goes on " + mount.id()
                    + " is not measured yet: no holes drawn"));
            return;
        }
        if (hung.isPresent() && !place.get().hangs()) {
            out.note(Finding.warning("nothing of this build uses " + made.seat().pattern() + " on " + mount.id()
                    + ": its holes are drawn at the middle of the seat; leave them undrilled unless they are wanted"));
        }
        new ScrewSeats(setting, frame, view, out).drill(mod, place.get(), hung);
    }

    /** Screws of what hangs in holes or slots that are there: cuts have to leave their metal. */
    private void standing(Setting.Hung hanging) {
        boolean drilled = out.holes().stream().anyMatch(h -> h.tag().purpose() == Hole.Purpose.SCREW);
        boolean inFlange = lids().stream().anyMatch(l -> l.raised().over() == RaisedCover.Over.WINDOW);
        if (drilled || inFlange || hasInsert() || mount.insetMm().valueHmm() > 0) {
            return;
        }
        int hole = Clearance.holeHmm(setting.catalog().standards(), hanging.thread());
        for (Dot dot : Seated.of(hanging).screws(frame, view, setting.catalog().standards())) {
            out.existing()
                    .add(new Hole.Round(
                            new Hole.Tag("", Hole.Purpose.SCREW, "", "screw in a hole that is there"), dot, hole));
        }
    }

    private static Hole.Tag tag(Hole.Purpose purpose, Mod mod, String what) {
        return new Hole.Tag("", purpose, mod.id(), what);
    }
}
