package loopwright.workshop.template;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.standard.Cutting;
import loopwright.quantity.Hundredths;
import loopwright.workshop.drawing.Area;

/**
 * Whether enough metal stays: between holes, to the edge of the flat, to folds, slots and clips.
 *
 * <p>Holes: one sheet thickness refuses, two warn; published guides for sheet metal agree on the first and prefer the
 * second. Rings, rims and the share that stays: common practice, no source, figures of the practice.
 */
record WebCheck(Setting setting, PanelView view) {

    /** What a group of like findings says, but for its holes. */
    private record Kind(Finding.Severity severity, String what, String wanted) {}

    /** The holes of a group, and the least metal of them. */
    private static final class Group {
        private final List<String> ids = new ArrayList<>();
        private final List<Double> metalHmm = new ArrayList<>();
    }

    private int sheetHmm() {
        return view.panel().thicknessMm().valueHmm();
    }

    private Cutting.Stay stay() {
        return setting.cutting().stay();
    }

    /** Whether a screw's hole finds two sheet thicknesses of metal all round and lies in nothing old. */
    boolean isSound(Hole hole, List<Hole> others) {
        int want = 2 * sheetHmm();
        Panel.Features features = view.panel().features();
        List<Panel.Feature> old = new ArrayList<>(features.slots());
        old.addAll(features.perforated());
        old.addAll(features.folds());
        old.addAll(features.clips());
        return view.flat().insideHmm(hole.reach()) >= want
                && others.stream().allMatch(o -> Metal.between(hole, o) >= want)
                && old.stream().flatMap(f -> view.area(f.at()).stream()).allMatch(a -> Metal.between(hole, a) >= 0);
    }

    /** Every finding about holes and what is there already. */
    List<Finding> of(List<Hole> holes, List<Hole> existing) {
        Map<Kind, Group> groups = new LinkedHashMap<>();
        for (int i = 0; i < holes.size(); i++) {
            Hole hole = holes.get(i);
            edge(groups, hole);
            features(groups, hole);
            for (int j = i + 1; j < holes.size(); j++) {
                pair(groups, hole, holes.get(j));
            }
        }
        List<Finding> out = new ArrayList<>();
        groups.forEach((kind, group) -> out.add(finding(kind, group)));
        existing(holes, existing).ifPresent(out::add);
        kept(holes).ifPresent(out::add);
        return out;
    }

    private static Finding finding(Kind kind, Group group) {
        double least = group.metalHmm.stream().min(Double::compare).orElse(0.0);
        return new Finding(
                kind.severity(),
                String.join(", ", group.ids) + ": " + mm(least) + " mm " + kind.what() + "; " + kind.wanted());
    }

    private static void add(Map<Kind, Group> groups, Kind kind, String ids, double metalHmm) {
        Group group = groups.computeIfAbsent(kind, k -> new Group());
        group.ids.add(ids);
        group.metalHmm.add(metalHmm);
    }

    private void edge(Map<Kind, Group> groups, Hole hole) {
        int metal = view.flat().insideHmm(hole.reach());
        if (metal < sheetHmm()) {
            add(
                    groups,
                    sheets(Finding.Severity.REFUSED, "to the edge of the flat"),
                    hole.tag().id(),
                    metal);
        } else if (hole.tag().purpose().isForScrew()) {
            if (metal < 2 * sheetHmm()) {
                add(
                        groups,
                        sheets(Finding.Severity.WARNING, "to the edge of the flat"),
                        hole.tag().id(),
                        metal);
            }
        } else {
            rim(groups, hole, metal, "of rim to the edge of the flat");
        }
    }

    private void rim(Map<Kind, Group> groups, Hole hole, double metal, String what) {
        String wanted = "wanted " + mm(Cutting.hmm(stay().rimLeastMm())) + " to " + mm(Cutting.hmm(stay().rimGoodMm()));
        if (metal < Cutting.hmm(stay().rimLeastMm())) {
            add(
                    groups,
                    new Kind(Finding.Severity.WARNING, what, wanted),
                    hole.tag().id(),
                    metal);
        } else if (metal < Cutting.hmm(stay().rimGoodMm())) {
            add(
                    groups,
                    new Kind(Finding.Severity.NOTE, what, wanted),
                    hole.tag().id(),
                    metal);
        }
    }

    private Kind sheets(Finding.Severity severity, String what) {
        boolean refused = severity == Finding.Severity.REFUSED;
        return new Kind(
                severity,
                what,
                (refused ? "at least one sheet thickness, " : "better two sheet thicknesses, ")
                        + mm(refused ? sheetHmm() : 2 * sheetHmm()));
    }

    private void pair(Map<Kind, Group> groups, Hole one, Hole other) {
        double metal = Metal.between(one, other);
        String ids = one.tag().id() + "-" + other.tag().id();
        boolean rings = one.tag().purpose() == Hole.Purpose.RING && other.tag().purpose() == Hole.Purpose.RING;
        int web = Cutting.hmm(stay().ringWebMm());
        if (rings && metal < web) {
            add(groups, new Kind(Finding.Severity.REFUSED, "of web between rings", "at least " + mm(web)), ids, metal);
        } else if (metal < sheetHmm()) {
            add(groups, sheets(Finding.Severity.REFUSED, "of metal between"), ids, metal);
        } else if (metal < 2 * sheetHmm()) {
            add(groups, sheets(Finding.Severity.WARNING, "of metal between"), ids, metal);
        }
    }

    private void features(Map<Kind, Group> groups, Hole hole) {
        Panel.Features features = view.panel().features();
        for (Panel.Feature fold : features.folds()) {
            view.area(fold.at()).ifPresent(area -> fold(groups, hole, fold.id(), Metal.between(hole, area)));
        }
        for (Panel.Feature clip : features.clips()) {
            view.area(clip.at())
                    .filter(a -> Metal.between(hole, a) < 0)
                    .ifPresent(a -> add(
                            groups,
                            new Kind(
                                    Finding.Severity.REFUSED,
                                    "into the clips " + clip.id(),
                                    "they hold a trim and have to survive"),
                            hole.tag().id(),
                            -Metal.between(hole, a)));
        }
        if (hole.tag().purpose().isForScrew()) {
            boolean seat = hole.tag().purpose() == Hole.Purpose.SCREW;
            old(
                    groups,
                    hole,
                    features.slots(),
                    seat ? Finding.Severity.REFUSED : Finding.Severity.WARNING,
                    seat
                            ? "no screw head holds half in a slot"
                            : "span the slot with a plate, or fix the cover elsewhere");
            old(
                    groups,
                    hole,
                    features.perforated(),
                    Finding.Severity.WARNING,
                    "put a plate or a wide washer under the head");
        }
    }

    private void fold(Map<Kind, Group> groups, Hole hole, String fold, double metal) {
        if (metal < sheetHmm()) {
            add(
                    groups,
                    new Kind(Finding.Severity.REFUSED, "to the fold " + fold, "never cut a fold"),
                    hole.tag().id(),
                    metal);
        } else if (!hole.tag().purpose().isForScrew()) {
            rim(groups, hole, metal, "of rim to the fold " + fold);
        }
    }

    private void old(
            Map<Kind, Group> groups, Hole hole, List<Panel.Feature> old, Finding.Severity severity, String wanted) {
        for (Panel.Feature feature : old) {
            Optional<Area> area = view.area(feature.at()).filter(a -> Metal.between(hole, a) < 0);
            boolean within = area.isPresent() && area.get().holds(hole.reach());
            if (area.isPresent() && !(within && severity == Finding.Severity.REFUSED)) {
                add(
                        groups,
                        new Kind(severity, "into " + feature.id(), wanted),
                        hole.tag().id(),
                        -Metal.between(hole, area.get()));
            }
        }
    }

    /** Screws that stay where they are: what the cuts leave them. */
    private Optional<Finding> existing(List<Hole> holes, List<Hole> existing) {
        long lost = 0;
        double least = Double.MAX_VALUE;
        for (Hole screw : existing) {
            double metal = holes.stream()
                    .mapToDouble(h -> Metal.between(h, screw))
                    .min()
                    .orElse(Double.MAX_VALUE);
            lost += metal < 0 ? 1 : 0;
            least = Math.min(least, metal);
        }
        if (lost > 0) {
            return Optional.of(Finding.warning(lost + " of " + existing.size()
                    + " screws that hang in the sheet as delivered lose their metal: something else has to be the"
                    + " seat"));
        }
        if (least >= 2 * sheetHmm()) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                least < sheetHmm() ? Finding.Severity.REFUSED : Finding.Severity.WARNING,
                mm(least)
                        + " mm of metal between a cut and a screw in the sheet as delivered; two sheet thicknesses are "
                        + mm(2 * sheetHmm())));
    }

    private Optional<Finding> kept(List<Hole> holes) {
        double flat = view.flat().squareMm();
        double gone = holes.stream().mapToDouble(Hole::squareMm).sum();
        double percent = 100 * (1 - gone / flat);
        return percent < stay().panelPercent()
                ? Optional.of(Finding.warning(Math.round(percent) + " % of the flat stays; wanted at least "
                        + Math.round(stay().panelPercent()) + " %: stiffen the panel or cut less"))
                : Optional.empty();
    }

    private static String mm(double hmm) {
        return Hundredths.text((int) Math.floor(hmm + 1e-6));
    }
}
