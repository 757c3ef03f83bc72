package loopwright.workshop.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.standard.Cutting;
import loopwright.quantity.Hundredths;

/**
 * Whether cuts show on the finished machine, by geometry: a cut is hidden when a raised cover overlaps its edge by more
 * than the cut and the placing may be off. What the catalogue claims is compared with that.
 *
 * @param lids raised covers on the panel
 */
record Sight(Setting setting, PanelView view, List<Lid> lids) {

    /** How far a cover has to reach past an edge, hundredths of a millimetre. */
    int needHmm() {
        return Cutting.hmm(setting.cutting().off().cutMm())
                + Cutting.hmm(setting.cutting().off().placingMm());
    }

    /** How far the cover that reaches farthest overlaps all edges of a hole. */
    Optional<Integer> overlapHmm(Hole hole) {
        return lids.stream().map(l -> l.outline().insideHmm(hole.reach())).max(Integer::compare);
    }

    /** Whether a cover hides it. */
    boolean isHidden(Hole hole) {
        return overlapHmm(hole).filter(o -> o > needHmm()).isPresent();
    }

    /** Whether a trim stands before the panel, which the catalogue does not draw. */
    boolean isBehindTrim() {
        return setting.chassis().mounts().stream()
                .filter(m -> m.panel().equals(view.panel().id()))
                .anyMatch(m -> m.opening().where() == Mount.Where.EDGES);
    }

    /** What the sheet says of a hole. */
    String word(Hole hole) {
        if (hole.tag().purpose().isForScrew()) {
            return "under its head";
        }
        if (isHidden(hole)) {
            return "hidden, overlap " + Hundredths.text(overlapHmm(hole).orElse(0));
        }
        return isBehindTrim() ? "behind the trim?" : "SEEN";
    }

    /** Where geometry and catalogue do not agree. */
    List<Finding> findings(List<Hole> holes) {
        List<Finding> out = new ArrayList<>();
        for (Mod mod : setting.mods()) {
            List<Hole> cuts = holes.stream()
                    .filter(h -> h.tag().mod().equals(mod.id()))
                    .filter(h -> !h.tag().purpose().isForScrew())
                    .toList();
            long seen = cuts.stream().filter(h -> !isHidden(h)).count();
            if (seen > 0 && mod.look().visibleCuts() == 0) {
                out.add(notHidden(mod, seen));
            } else if (!cuts.isEmpty() && seen == 0 && mod.look().visibleCuts() > 0) {
                out.add(Finding.warning("the catalogue counts " + mod.look().visibleCuts() + " visible cuts of "
                        + mod.id() + ", but a cover hides them all"));
            }
        }
        return out;
    }

    private Finding notHidden(Mod mod, long seen) {
        String claim = "the catalogue counts no visible cut of " + mod.id() + ", and nothing in it covers " + seen
                + " of them by more than " + Hundredths.text(needHmm()) + " mm";
        return isBehindTrim()
                ? Finding.note(claim + ": the trim before them is not in it, so look whether it does")
                : Finding.warning(claim + ": they will show");
    }
}
