package loopwright.workshop.template;

import java.util.Optional;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.standard.Cutting;
import loopwright.fit.MountFrame;
import loopwright.quantity.Hundredths;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Dot;

/** Holes for the screws of a pattern; slots where it slides and the slots leave metal between them. */
record ScrewSeats(Setting setting, MountFrame frame, PanelView view, Holes out) {

    /** Slots keep so many sheet thicknesses between them; common practice, no source. */
    private static final int SLOT_WEB_SHEETS = 3;

    /** Drills the pattern. */
    void drill(Mod mod, Seated place, Optional<Setting.Hung> hung) {
        int hole = Clearance.holeHmm(setting.catalog().standards(), hung.flatMap(Setting.Hung::thread));
        String what = Clearance.words(hung.flatMap(Setting.Hung::thread)) + ", " + place.pattern();
        Hole.Tag tag = new Hole.Tag("", Hole.Purpose.SCREW, mod.id(), what);
        boolean slots = slides(place) && slotsKeepMetal(place, hole);
        if (slides(place) && !slots) {
            out.note(Finding.note(place.pattern() + " on " + frame.mount().id() + " may slide "
                    + Hundredths.text(place.highHmm() - place.lowHmm())
                    + " mm, but slots of that length would meet or be too long: round holes, where it hangs"));
        }
        for (Dot dot : place.screws(frame, view, setting.catalog().standards())) {
            out.holes().add(slots ? slot(tag, place, dot, hole) : new Hole.Round(tag, dot, hole));
        }
    }

    private static boolean slides(Seated place) {
        return place.highHmm() > place.lowHmm();
    }

    private boolean slotsKeepMetal(Seated place, int hole) {
        Cutting.Stay stay = setting.cutting().stay();
        int slide = place.highHmm() - place.lowHmm();
        int web = Math.max(
                Cutting.hmm(stay.slotWebMm()),
                SLOT_WEB_SHEETS * frame.panel().thicknessMm().valueHmm());
        int pitch = place.fan(setting.catalog().standards()).holePitchMm().valueHmm();
        int row = place.pattern().fans() > 1 ? place.pattern().sizeMm() * Hundredths.PER_MM - pitch : pitch;
        return slide + hole <= Cutting.hmm(stay.slotLongestMm()) && row - slide - hole >= web;
    }

    private Hole slot(Hole.Tag tag, Seated place, Dot dot, int hole) {
        Dot from = view.dot(frame.lengthwise(), place.lowHmm(), 0);
        Dot to = view.dot(frame.lengthwise(), place.highHmm(), 0);
        Area centres = Area.between(dot.plus(from.xHmm(), from.yHmm()), dot.plus(to.xHmm(), to.yHmm()));
        return new Hole.Window(tag, centres.grown(hole / 2), hole / 2);
    }
}
