package loopwright.workshop.template;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Heading;
import loopwright.catalog.basis.Point;
import loopwright.catalog.basis.Pose;
import loopwright.catalog.chassis.Inside;
import loopwright.catalog.standard.Standards;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Dot;
import loopwright.workshop.drawing.Layer;

/**
 * Where the standoffs of boards are in the plate behind them: keep-outs, for every board form that the case takes.
 *
 * <p>Hole places: the boards of {@code shared/standards.yaml}. A pad of 10 x 10 round each: microATX Motherboard
 * Interface Specification 1.2, from a secondary copy.
 */
record Standoffs(Setting setting, PanelView view) {

    /** Side of the square that stays free round a standoff. */
    private static final int PAD_HMM = 1000;

    /** How far behind a board its plate may lie: a standoff of 6.4 and a board of 1.6, with room to spare. */
    private static final int BEHIND_HMM = 1500;

    /** The pads, by the names of their holes; none where no board stands on the plate. */
    List<Plan.Patch> pads(int planeHmm) {
        Inside.BoardBay bay = setting.chassis().inside().board();
        Axis through = view.panel().face().normal();
        if (bay.pose().height().axis() != through
                || Math.abs(bay.pose().corner().along(through).valueHmm() - planeHmm) > BEHIND_HMM) {
            return List.of();
        }
        TreeMap<String, Area> out = new TreeMap<>();
        for (Standards.BoardOutline board : setting.catalog().standards().boards()) {
            if (bay.forms().contains(board.form())) {
                board.holes().forEach(h -> out.put(h.id(), Area.round(at(bay.pose(), h), PAD_HMM, PAD_HMM)));
            }
        }
        List<Plan.Patch> pads = new ArrayList<>();
        out.forEach((id, area) -> pads.add(new Plan.Patch(Layer.KEEP_OUT, area, id)));
        return pads;
    }

    private Dot at(Pose pose, Standards.Hole hole) {
        int down = along(pose.corner(), pose.length(), hole.lengthMm().valueHmm());
        int away = along(pose.corner(), pose.width(), hole.widthMm().valueHmm());
        return view.dot(pose.length().axis(), down, away);
    }

    private static int along(Point corner, Heading heading, int byHmm) {
        return corner.along(heading.axis()).valueHmm() + heading.sign() * byHmm;
    }

    /** What holes do to the pads. */
    static void check(FindingGroups groups, Hole hole, List<Plan.Patch> pads) {
        for (Plan.Patch pad : pads) {
            double metal = Metal.between(hole, pad.area());
            if (metal < 0) {
                FindingGroups.Kind kind = new FindingGroups.Kind(
                        Finding.Severity.REFUSED, "into the pad of standoff " + pad.name(), "a board is screwed there");
                groups.add(kind, hole.tag().id(), -metal);
            }
        }
    }
}
