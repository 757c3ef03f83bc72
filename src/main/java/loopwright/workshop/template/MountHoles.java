package loopwright.workshop.template;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.ModSeat;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.fit.MountFrame;
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
        List<Lid> lids = lids();
        CutHoles cuts = cuts();
        for (Mod mod : setting.mods()) {
            mod.effect().airways().stream()
                    .filter(a -> a.mount().equals(mount.id()) && a.cut().isPresent())
                    .forEach(a -> cuts.airway(mod, a));
        }
        lids.forEach(cuts::underLid);
        setting.mods()
                .forEach(mod -> mod.effect().seats().stream()
                        .filter(s -> s.mount().equals(mount.id()))
                        .forEach(s -> seat(mod, s)));
        hung.ifPresent(this::standing);
        lids.forEach(lid -> new Fixings(setting, view, out).of(lid));
    }

    private CutHoles cuts() {
        return new CutHoles(setting, frame, view, out);
    }

    private List<Lid> lids() {
        return out.lids().stream()
                .filter(l -> l.raised().mount().equals(mount.id()))
                .toList();
    }

    private static boolean overWindow(Mod mod, String mount) {
        return mod.effect().covers().stream()
                .anyMatch(c -> c.mount().equals(mount) && c.over() == RaisedCover.Over.WINDOW);
    }

    private void seat(Mod mod, ModSeat made) {
        if (overWindow(mod, mount.id())) {
            out.note(Finding.note("the screws of " + made.seat().pattern() + " on " + mount.id()
                    + " sit in the flange of the cover: no holes for them in the sheet"));
            return;
        }
        if (cuts().hasInsert()) {
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
            out.note(Finding.note("what hangs on " + mount.id() + " does not use "
                    + made.seat().pattern() + " of " + mod.id() + ": its holes are not drawn, leave them undrilled"));
            return;
        }
        new ScrewSeats(setting, frame, view, out).drill(mod, place.get(), hung);
    }

    /** Screws of what hangs in holes or slots that are there: cuts have to leave their metal. */
    private void standing(Setting.Hung hanging) {
        boolean drilled = out.holes().stream().anyMatch(h -> h.tag().purpose() == Hole.Purpose.SCREW);
        boolean inFlange = lids().stream().anyMatch(l -> l.raised().over() == RaisedCover.Over.WINDOW);
        if (drilled || inFlange || cuts().hasInsert() || mount.insetMm().valueHmm() > 0) {
            return;
        }
        int hole = Clearance.holeHmm(setting.catalog().standards(), hanging.thread());
        for (Dot dot : Seated.of(hanging).screws(frame, view, setting.catalog().standards())) {
            out.existing()
                    .add(new Hole.Round(
                            new Hole.Tag("", Hole.Purpose.SCREW, "", "screw in a hole that is there"), dot, hole));
        }
    }
}
