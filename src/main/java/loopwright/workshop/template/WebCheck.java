package loopwright.workshop.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.standard.Cutting;
import loopwright.workshop.template.FindingGroups.Kind;

/**
 * Whether enough metal stays: between holes, to the edge of the flat, to folds, slots and clips.
 *
 * <p>Holes: one sheet thickness refuses, two warn: common practice of sheet metal work, no source. Rings, rims and the share that stays: common practice, no source, figures of the practice.
 */
record WebCheck(Setting setting, PanelView view) {

    private int sheetHmm() {
        return view.panel().thicknessMm().valueHmm();
    }

    private Cutting.Stay stay() {
        return setting.cutting().stay();
    }

    /** Whether a screw's hole has two sheet thicknesses of metal to the edge and to all other holes. */
    boolean hasMetal(Hole hole, List<Hole> others) {
        int want = 2 * sheetHmm();
        return view.flat().insideHmm(hole.reach()) >= want
                && others.stream().allMatch(o -> Metal.between(hole, o) >= want);
    }

    /** Every finding about holes and what is there already. */
    List<Finding> of(List<Hole> holes, List<Hole> existing) {
        FindingGroups groups = new FindingGroups();
        PastCheck past = new PastCheck(setting, view);
        for (int i = 0; i < holes.size(); i++) {
            Hole hole = holes.get(i);
            edge(groups, hole);
            past.of(groups, hole);
            for (int j = i + 1; j < holes.size(); j++) {
                pair(groups, hole, holes.get(j));
            }
        }
        List<Finding> out = new ArrayList<>(groups.findings());
        existing(holes, existing).ifPresent(out::add);
        kept(holes).ifPresent(out::add);
        return out;
    }

    private void edge(FindingGroups groups, Hole hole) {
        int metal = view.flat().insideHmm(hole.reach());
        String what = "to the edge of the flat";
        if (metal < sheetHmm()) {
            groups.add(sheets(Finding.Severity.REFUSED, what), hole.tag().id(), metal);
        } else if (!hole.tag().purpose().isForScrew()) {
            rim(groups, hole, metal, "of rim " + what);
        } else if (metal < 2 * sheetHmm()) {
            groups.add(sheets(Finding.Severity.WARNING, what), hole.tag().id(), metal);
        }
    }

    /** What is said of a rim beside a cut. */
    void rim(FindingGroups groups, Hole hole, double metal, String what) {
        int least = Cutting.hmm(stay().rimLeastMm());
        int good = Cutting.hmm(stay().rimGoodMm());
        if (metal < good) {
            Finding.Severity severity = metal < least ? Finding.Severity.WARNING : Finding.Severity.NOTE;
            String wanted = "wanted " + FindingGroups.mm(least) + " to " + FindingGroups.mm(good);
            groups.add(new Kind(severity, what, wanted), hole.tag().id(), metal);
        }
    }

    private Kind sheets(Finding.Severity severity, String what) {
        boolean refused = severity == Finding.Severity.REFUSED;
        return new Kind(
                severity,
                what,
                (refused ? "at least one sheet thickness, " : "better two sheet thicknesses, ")
                        + FindingGroups.mm(refused ? sheetHmm() : 2 * sheetHmm()));
    }

    private void pair(FindingGroups groups, Hole one, Hole other) {
        double metal = Metal.between(one, other);
        String ids = one.tag().id() + "-" + other.tag().id();
        boolean rings = one.tag().purpose() == Hole.Purpose.RING && other.tag().purpose() == Hole.Purpose.RING;
        int web = Cutting.hmm(stay().ringWebMm());
        if (rings && metal < web) {
            String wanted = "at least " + FindingGroups.mm(web);
            groups.add(new Kind(Finding.Severity.REFUSED, "of web between rings", wanted), ids, metal);
        } else if (metal < sheetHmm()) {
            groups.add(sheets(Finding.Severity.REFUSED, "of metal between"), ids, metal);
        } else if (metal < 2 * sheetHmm()) {
            groups.add(sheets(Finding.Severity.WARNING, "of metal between"), ids, metal);
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
            return Optional.of(Finding.refused(lost + " of " + existing.size()
                    + " screws that hang in the sheet as delivered lose their metal, and nothing else is their seat"));
        }
        if (least >= 2 * sheetHmm()) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                least < sheetHmm() ? Finding.Severity.REFUSED : Finding.Severity.WARNING,
                FindingGroups.mm(least)
                        + " mm of metal between a cut and a screw in the sheet as delivered; two sheet thicknesses are "
                        + FindingGroups.mm(2 * sheetHmm())));
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
}
