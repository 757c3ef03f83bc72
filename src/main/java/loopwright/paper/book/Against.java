package loopwright.paper.book;

import java.math.BigDecimal;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import loopwright.answer.Checklist;
import loopwright.answer.Inspection;
import loopwright.answer.cable.CablePlan;
import loopwright.catalog.brief.BriefLimits;
import loopwright.paper.InspectSections;
import loopwright.plumbing.LoopPlan;
import loopwright.plumbing.rule.Finding;
import loopwright.tolerance.Chance;
import loopwright.workshop.template.PanelTemplate;

/** What stands against a build: what has to be settled before it is signed, ordered or cut. Nothing in it is a detail. */
public final class Against {

    private final WorkPapers papers;
    private final Inspection in;
    private final BriefLimits limits;
    private final List<String> out = new ArrayList<>();

    private Against(WorkPapers papers) {
        this.papers = papers;
        this.in = papers.inspection();
        this.limits = in.fitCase().brief().limits();
    }

    /** A sentence each; empty where nothing does. */
    public static List<String> of(WorkPapers papers) {
        Against against = new Against(papers);
        against.brief();
        against.chance();
        against.money();
        against.days();
        against.bench();
        against.loop();
        against.electrics();
        return List.copyOf(against.out);
    }

    private void brief() {
        for (Checklist.Line line : Checklist.of(in)) {
            if (line.kept() == Checklist.Kept.BROKEN) {
                out.add("The brief's " + line.line() + " is not kept: " + line.given() + ", wanted " + line.wanted()
                        + ".");
            }
        }
    }

    private void chance() {
        var probability = in.witness().probability();
        if (probability.isEmpty() || Chance.of(Chance.told(probability.getAsDouble())) == Chance.UNLIKELY) {
            out.add("It may well not fit: " + InspectSections.chance(papers.answer())
                    + ". Measure before anything is bought.");
        }
    }

    private void money() {
        limits.budgetCents().ifPresent(budget -> {
            long over = papers.quote().sums().grossCents() - budget;
            if (over > 0) {
                out.add("The quote is " + money(over) + " over the budget of " + money(budget)
                        + ": the ranking's price keeps it, with no spread of hours, and with runs and leads by rule.");
            }
        });
    }

    private String money(long cents) {
        return BigDecimal.valueOf(cents, 2).toPlainString() + " "
                + papers.quote().sums().currency();
    }

    private void days() {
        limits.leadMaxDays().ifPresent(most -> {
            var schedule = papers.plan().schedule();
            long days = ChronoUnit.DAYS.between(
                    schedule.start(), schedule.finish().at().toLocalDate());
            if (days > most) {
                out.add("Handover is " + days + " days after the start, the brief allows " + most
                        + ": the ranking counts hands and waits, not weekends and turns.");
            }
        });
    }

    private void bench() {
        for (PanelTemplate panel : papers.templates().all()) {
            if (panel.isRefused()) {
                out.add("The template " + panel.id() + " is REFUSED: too little metal stays. Do not cut it like this.");
            }
        }
        papers.fasteners()
                .refused()
                .forEach(s -> out.add("No screw of the stock fits the "
                        + s.joint().mount() + " " + s.joint().holding().word() + "."));
        if (!papers.plan().assembly().deadlock().isEmpty()) {
            out.add("These parts block each other's way in: "
                    + String.join(", ", papers.plan().assembly().deadlock()) + ". Try with card dummies first.");
        }
    }

    private void loop() {
        LoopPlan plan = papers.answer().plumbing().plan();
        long blocked = plan.runs().stream().filter(r -> r.route().isEmpty()).count();
        if (blocked > 0) {
            out.add(blocked + " of " + plan.runs().size()
                    + " tube runs find no way with right angles and this tube: lay them by hand at the first dry fit.");
        }
        plan.findings().stream()
                .filter(f -> f.verdict() == Finding.Verdict.BROKEN)
                .filter(f -> f.section() != Finding.Section.RUNS || blocked == 0)
                .forEach(f -> out.add("Loop: " + f.sentence()));
    }

    private void electrics() {
        in.powering().shortfall().ifPresent(s -> out.add("Fans and pump: missing " + s.missing() + "."));
        papers.answer().cables().ifPresent(plan -> {
            for (CablePlan.Feed feed : plan.feeds()) {
                if (feed.verdict() != CablePlan.Verdict.REACHES && feed.cure().isEmpty()) {
                    out.add("No cable or lead reaches the " + feed.to() + ".");
                }
            }
            if (plan.leftL() > plan.room().freeL()) {
                out.add("There is more cable left over than room to put it away.");
            }
        });
    }
}
