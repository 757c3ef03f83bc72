package loopwright.rank;

import java.util.List;
import java.util.Optional;
import loopwright.fit.Layout;

/** What bounds say of a whole layout, before any of its builds is put together. */
final class Outlook {

    private final Bounds bounds;
    private final Core ideal;
    private final MetalChoice metals;
    private final BuildLimits limits;

    Outlook(Bounds bounds, List<Core> cores, BuildLimits limits) {
        this.metals = new MetalChoice(bounds.shapes(), cores);
        this.bounds = bounds;
        this.ideal = Bounds.ideal(cores);
        this.limits = limits;
    }

    /** What bounds every build of a layout with a mod set. */
    Goal.Bound bound(Layout layout, Build.Done done) {
        return bounds.ofAnyAir(ideal, done, layout.stacks());
    }

    /** What a layout that could be had for less than a price fails by; empty when none could. */
    Optional<String> whyNotCheaper(Layout layout, List<Build.Done> ways, long priceCents) {
        Optional<String> why = Optional.empty();
        if (!metals.isPossible(layout.stacks())) {
            return Optional.of(BuildLimits.MIXED_METALS);
        }
        for (Build.Done done : ways) {
            for (int duty : bounds.dutiesPercent()) {
                Goal.Bound bound = bounds.ofAnyAir(ideal, done, layout.stacks(), duty);
                if (bound.priceCents() < priceCents) {
                    String reason = limits.firstBroken(bound);
                    // The coolest duty comes first. Too loud there and too hot once quiet is too loud once cool enough.
                    boolean loud = why.filter(BuildLimits.TOO_LOUD::equals).isPresent();
                    if (why.isEmpty() || (loud && !reason.equals(BuildLimits.TOO_HOT))) {
                        why = Optional.of(reason);
                    }
                }
            }
        }
        return why;
    }
}
