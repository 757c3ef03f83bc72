package loopwright.paper.book;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import loopwright.answer.Checklist;
import loopwright.answer.Inspection;
import loopwright.fit.Gap;
import loopwright.paper.InspectSections;
import loopwright.paper.Mm;
import loopwright.rank.Build;
import loopwright.rank.RankResult.Ranked;

/** What the build is: how it stands, what it keeps, where it is tight, its loop, what else could be built. */
final class BuildChapters {

    /** Clearances listed: the tightest. */
    static final int GAPS = 12;

    private static final double CENTS = 100;

    private final WorkPapers papers;
    private final Inspection in;
    private final List<Ranked> unbeaten;

    BuildChapters(WorkPapers papers) {
        this.papers = papers;
        this.in = papers.inspection();
        this.unbeaten = papers.unbeaten();
    }

    Html views() {
        SectionViews views = new SectionViews(in.fitCase(), in.witness());
        Html seen = new Html();
        for (View view : View.values()) {
            seen.figure(views.svg(view), "Seen " + view.words() + ".");
        }
        List<String> names = new ArrayList<>();
        for (int i = 0; i < views.names().size(); i++) {
            names.add((i + 1) + " " + views.names().get(i));
        }
        return seen.text("Numbers: " + String.join(", ", names) + ". Dashed: room that is kept free.")
                .heading("Tightest places between two bodies, dimensioned in red")
                .list(views.tightest())
                .text("Places against a wall are in the list of clearances.");
    }

    Html loop() {
        String said = "Temperature after each part, at full load; pressure lost in it. ";
        String rankedC = Mm.rounded(in.state().water().meanC(), 1)
                + " C as ranked, with the workshop's rule for tube and elbows.";
        return papers.answer()
                .plumbing()
                .planned()
                .map(planned -> new Html()
                        .figure(LoopDiagram.svg(planned), said + "Parts in the order of the planned runs.")
                        .text("Coolant " + Mm.rounded(planned.water().meanC(), 1) + " C with these runs, " + rankedC))
                .orElseGet(() -> new Html()
                        .figure(
                                LoopDiagram.svg(in.state()),
                                said + "Parts as ranked: the planned runs find no steady state.")
                        .text("Coolant " + rankedC));
    }

    Html mass() {
        return new Html().passages(InspectSections.mass(papers.answer()));
    }

    Html brief() {
        return new Html().table(checklist());
    }

    private Rows checklist() {
        Rows rows = Rows.headed("line", "kept", "margin", "the build gives", "the brief says");
        for (Checklist.Line line : Checklist.of(in)) {
            OptionalDouble margin = line.margin();
            rows.row(
                    line.line(),
                    line.kept().name().toLowerCase(java.util.Locale.ROOT),
                    margin.isPresent()
                            ? Mm.rounded(margin.getAsDouble(), 2)
                                    .stripTrailingZeros()
                                    .toPlainString()
                            : "-",
                    line.given(),
                    line.wanted());
        }
        return rows;
    }

    Html clearances() {
        return new Html().table(gaps());
    }

    private Rows gaps() {
        Rows rows = Rows.headed("between", "margin, mm", "apart, mm", "needs, mm", "worst case, mm", "verdict");
        for (Gap gap : in.witness().gaps().stream().limit(GAPS).toList()) {
            rows.row(
                    gap.one() + " and " + gap.other(),
                    Mm.text(gap.marginHmm()),
                    Mm.text(gap.clearanceHmm()),
                    Mm.text(gap.needHmm()),
                    Mm.text(gap.worstCaseHmm()),
                    gap.verdict().name().toLowerCase(java.util.Locale.ROOT));
        }
        return rows;
    }

    Html choice() {
        return new Html().figure(chart(), chartWords());
    }

    private String chart() {
        double roomC = in.fitCase().brief().limits().roomC();
        List<CostChart.Dot> dots = new ArrayList<>();
        for (Ranked one : unbeaten) {
            Build.Outcome outcome = one.build().outcome();
            dots.add(new CostChart.Dot(
                    outcome.priceCents() / CENTS,
                    roomC + outcome.coolantOverRoomCentiK() / CENTS,
                    one.build().key().equals(in.build().key())));
        }
        return new CostChart(dots, in.fitCase().brief().terms().currency()).svg();
    }

    private String chartWords() {
        return unbeaten.size() + " builds that no other beats in price and temperature; ringed: this one.";
    }
}
