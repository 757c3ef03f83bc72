package loopwright.workshop.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.chassis.Panel;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.template.FindingGroups.Kind;

/** What holes do to the past of a sheet: its folds and clips, its slots and perforated areas. */
record PastCheck(Setting setting, PanelView view) {

    /** Findings about one hole, into {@code groups}. */
    void of(FindingGroups groups, Hole hole) {
        Panel.Features features = view.panel().features();
        for (Panel.Feature fold : features.folds()) {
            view.area(fold.at()).ifPresent(area -> fold(groups, hole, fold.id(), Metal.between(hole, area)));
        }
        for (Panel.Feature clip : features.clips()) {
            Kind kind = new Kind(
                    Finding.Severity.REFUSED, "into the clips " + clip.id(), "they hold a trim and have to survive");
            into(hole, clip).ifPresent(area -> groups.add(kind, hole.tag().id(), -Metal.between(hole, area)));
        }
        if (hole.tag().purpose().isForScrew()) {
            screw(groups, hole, features);
        }
    }

    private void screw(FindingGroups groups, Hole hole, Panel.Features features) {
        boolean seat = hole.tag().purpose() == Hole.Purpose.SCREW;
        for (Panel.Feature slot : features.slots()) {
            Optional<Area> area = into(hole, slot);
            if (area.isPresent() && !(seat && area.get().holds(hole.reach()))) {
                Kind kind = seat
                        ? new Kind(Finding.Severity.REFUSED, "into " + slot.id(), "no screw head holds half in a slot")
                        : new Kind(
                                Finding.Severity.WARNING,
                                "into " + slot.id(),
                                "span the slot with a plate, or fix the cover elsewhere");
                groups.add(kind, hole.tag().id(), -Metal.between(hole, area.get()));
            }
        }
        for (Panel.Feature area : features.perforated()) {
            Kind kind = new Kind(
                    Finding.Severity.WARNING, "into " + area.id(), "put a plate or a wide washer under the head");
            into(hole, area).ifPresent(a -> groups.add(kind, hole.tag().id(), -Metal.between(hole, a)));
        }
    }

    private void fold(FindingGroups groups, Hole hole, String fold, double metal) {
        if (metal < view.panel().thicknessMm().valueHmm()) {
            Kind kind = new Kind(Finding.Severity.REFUSED, "to the fold " + fold, "never cut a fold");
            groups.add(kind, hole.tag().id(), metal);
        } else if (!hole.tag().purpose().isForScrew()) {
            new WebCheck(setting, view).rim(groups, hole, metal, "of rim to the fold " + fold);
        }
    }

    private Optional<Area> into(Hole hole, Panel.Feature feature) {
        return view.area(feature.at()).filter(a -> Metal.between(hole, a) < 0);
    }

    /** Whether a hole meets nothing old. */
    boolean isClear(Hole hole) {
        Panel.Features features = view.panel().features();
        return meetsNone(hole, features.perforated()) && meetsNone(hole, solid(features));
    }

    /** Whether it meets nothing old but perforated sheet, which a plate under the head spans. */
    boolean isSpanned(Hole hole) {
        return meetsNone(hole, solid(view.panel().features()));
    }

    private boolean meetsNone(Hole hole, List<Panel.Feature> features) {
        return features.stream().noneMatch(f -> into(hole, f).isPresent());
    }

    private static List<Panel.Feature> solid(Panel.Features features) {
        List<Panel.Feature> out = new ArrayList<>(features.slots());
        out.addAll(features.folds());
        out.addAll(features.clips());
        return out;
    }
}
