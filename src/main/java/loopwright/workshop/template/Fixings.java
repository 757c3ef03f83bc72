package loopwright.workshop.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Dot;

/**
 * Where a raised cover is screwed down: the corners, then its long sides, on a line in the middle between its edge and
 * what is cut under it. Moved along that line, at most {@value #SHIFT_HMM} hundredths, to where there is sound metal.
 *
 * <p>The catalogue says how many screws, not where: the positions are a proposal, and the sheet says so.
 */
record Fixings(Setting setting, PanelView view, Holes out) {

    /** How far a screw may be moved to find metal. */
    private static final int SHIFT_HMM = 2000;

    private static final int STEP_HMM = 50;

    /** How far from its edge a cover is screwed down where nothing is cut under it. */
    private static final int INSET_HMM = 400;

    /** Screws of a cover. */
    void of(Lid lid) {
        int hole = Clearance.holeHmm(
                setting.catalog().standards(), Optional.of(lid.cover().fixing().thread()));
        Area line = lid.outline().grown(-Math.max(inset(lid), fromEdge(lid, hole)));
        Hole.Tag tag = new Hole.Tag(
                "",
                Hole.Purpose.FIXING,
                lid.mod().id(),
                Clearance.words(Optional.of(lid.cover().fixing().thread())) + ", cover");
        List<Hole> made = new ArrayList<>();
        for (Dot dot : even(line, lid.cover().fixing().screws())) {
            made.add(sound(new Hole.Round(tag, dot, hole), line, made));
        }
        out.holes().addAll(made);
        out.note(Finding.note("the catalogue says how many screws hold "
                + lid.cover().id() + ", not where: lay the cover on and mark through it, the holes F are a proposal"));
    }

    private int inset(Lid lid) {
        return out.holes().stream()
                .filter(h -> !h.tag().purpose().isForScrew() && h.reach().meets(lid.outline()))
                .map(Hole::reach)
                .reduce(Area::with)
                .map(cut -> Math.max(lid.outline().insideHmm(cut) / 2, 0))
                .orElse(INSET_HMM);
    }

    /** How far inside the cover's edge the holes keep two sheet thicknesses to the edge of the flat. */
    private int fromEdge(Lid lid, int holeHmm) {
        int keep = 2 * view.panel().thicknessMm().valueHmm() + (holeHmm + 1) / 2;
        return keep - view.flat().insideHmm(lid.outline());
    }

    /** The corners, then the rest evenly on the two long sides. */
    static List<Dot> even(Area line, int count) {
        List<Dot> out = new ArrayList<>();
        out.add(new Dot(line.leftHmm(), line.bottomHmm()));
        out.add(new Dot(line.rightHmm(), line.topHmm()));
        if (count > 2) {
            out.add(new Dot(line.rightHmm(), line.bottomHmm()));
        }
        if (count > 3) {
            out.add(new Dot(line.leftHmm(), line.topHmm()));
        }
        boolean wide = line.widthHmm() > line.heightHmm();
        int left = Math.max(0, count - 4);
        for (int side = 0; side < 2; side++) {
            int here = side == 0 ? (left + 1) / 2 : left / 2;
            for (int i = 1; i <= here; i++) {
                out.add(
                        wide
                                ? new Dot(
                                        line.leftHmm() + line.widthHmm() * i / (here + 1),
                                        side == 0 ? line.bottomHmm() : line.topHmm())
                                : new Dot(
                                        side == 0 ? line.leftHmm() : line.rightHmm(),
                                        line.bottomHmm() + line.heightHmm() * i / (here + 1)));
            }
        }
        return out;
    }

    /** Where there is sound metal; else where only perforated sheet is in the way; else where it was wanted. */
    private Hole sound(Hole.Round wanted, Area line, List<Hole> made) {
        WebCheck check = new WebCheck(setting, view);
        PastCheck past = new PastCheck(setting, view);
        List<Hole> others = new ArrayList<>(out.holes());
        others.addAll(out.existing());
        others.addAll(made);
        List<Hole> free = moved(wanted, line).stream()
                .filter(hole -> check.hasMetal(hole, others))
                .toList();
        return free.stream()
                .filter(past::isClear)
                .findFirst()
                .or(() -> free.stream().filter(past::isSpanned).findFirst())
                .orElse(wanted);
    }

    private static List<Hole> moved(Hole.Round wanted, Area line) {
        List<Hole> out = new ArrayList<>();
        for (int shift = 0; shift <= SHIFT_HMM; shift += STEP_HMM) {
            for (Dot by : List.of(new Dot(shift, 0), new Dot(-shift, 0), new Dot(0, shift), new Dot(0, -shift))) {
                Dot at = wanted.centre().plus(by.xHmm(), by.yHmm());
                if (isOn(line, at)) {
                    out.add(new Hole.Round(wanted.tag(), at, wanted.diameterHmm()));
                }
            }
        }
        return out;
    }

    private static boolean isOn(Area line, Dot at) {
        boolean within = at.xHmm() >= line.leftHmm()
                && at.xHmm() <= line.rightHmm()
                && at.yHmm() >= line.bottomHmm()
                && at.yHmm() <= line.topHmm();
        boolean upright = at.xHmm() == line.leftHmm() || at.xHmm() == line.rightHmm();
        boolean level = at.yHmm() == line.bottomHmm() || at.yHmm() == line.topHmm();
        return within && (upright || level);
    }
}
