package loopwright.plumbing.rule;

import java.util.List;
import loopwright.catalog.basis.Heading;
import loopwright.catalog.standard.PlumbingPractice;
import loopwright.plumbing.LoopPlan;
import loopwright.plumbing.Port;
import loopwright.plumbing.rule.Finding.Section;
import loopwright.plumbing.rule.Finding.Verdict;
import loopwright.quantity.Hundredths;

/** A funnel stands over the fill cap. */
final class CapHasRoom implements LoopRule {

    @Override
    public String id() {
        return "plumbing.cap-has-room";
    }

    @Override
    public String statement() {
        return "60 to 80 mm are free over the fill cap";
    }

    @Override
    public List<Finding> of(LoopPlan plan, PlumbingPractice practice) {
        Port cap = plan.openings().fill();
        if (cap.out() != Heading.UP) {
            return List.of(new Finding(
                    id(),
                    Section.FILL,
                    Verdict.WARN,
                    "The cap looks " + cap.out().name().toLowerCase(java.util.Locale.ROOT)
                            + ", not up: the chassis has to be turned, or the tank taken out, to fill."));
        }
        Reach reach = Reach.from(plan, cap);
        int least = practice.tank().capFreeMinMm();
        int good = practice.tank().capFreeGoodMm();
        String free = Heights.mm(reach.freeHmm()) + " are free over the cap, up to " + reach.until();
        if (reach.freeHmm() >= Hundredths.ofMm(least)) {
            String care = reach.freeHmm() < Hundredths.ofMm(good) ? ": a small funnel." : ".";
            return List.of(new Finding(id(), Section.FILL, Verdict.OK, free + care));
        }
        return List.of(new Finding(
                id(),
                Section.FILL,
                Verdict.WARN,
                free + ", a funnel wants " + least + " to " + good
                        + ": fill from the side or through a hose, or take off what is above."));
    }
}
