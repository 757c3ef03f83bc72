package loopwright.trade;

import static loopwright.testing.Answers.gap;
import static loopwright.testing.Mm.hmm;
import static loopwright.testing.Mm.mm;
import static loopwright.testing.SmallMods.mount;
import static loopwright.testing.SmallMods.seat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import loopwright.answer.FitAnswer;
import loopwright.answer.FitView;
import loopwright.answer.Halt;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.BriefLimits;
import loopwright.fit.Arrangement;
import loopwright.fit.FitCase;
import loopwright.fit.FitWish;
import loopwright.fit.Gap;
import loopwright.fit.Witness;
import loopwright.geometry.Sum;
import loopwright.geometry.Verdict;
import loopwright.paper.FitCsv;
import loopwright.paper.FitFull;
import loopwright.paper.FitJson;
import loopwright.paper.FitLines;
import loopwright.paper.FitPaper;
import loopwright.paper.FitText;
import loopwright.paper.Ink;
import loopwright.paper.Origin;
import loopwright.quantity.Dimension;
import loopwright.testing.Answers;
import loopwright.testing.Answers.Wish;
import loopwright.testing.SmallCase;
import loopwright.testing.SmallMods.Spot;
import loopwright.testing.SmallParts;
import org.junit.jupiter.api.Test;

/** Common practice, no source: worst case, root sum square and the chance of a card behind a front stack, as told. */
class HowSureTest {

    private static final Wish SINGLE = new Wish("1x120", 30, Arrangement.PUSH);

    /** 330 inside, stack 30 + 25, and a card; ± 1 case, 1 radiator, 0.5 fan, 1.5 card. */
    private static SmallCase cardOf(double lengthMm) {
        return new SmallCase(330, 300)
                .mount(Face.FRONT, mount("front", Axis.Z, seat("1x120", new Spot(85, 170))))
                .with(SmallParts.radiator("radiator", "1x120", mm(30, 1)))
                .with(SmallParts.fan("fan", 120, mm(25, 0.5)))
                .rearPlane(mm(330, 1))
                .with(SmallParts.card("card", mm(lengthMm, 1.5), 150));
    }

    private static final Origin ORIGIN = new Origin("loopwright", "catalogue", "brief", List.of());

    private static String told(SmallCase question, Function<PrintWriter, FitPaper> paper, Optional<Double> confidence) {
        FitCase old = question.fitCase();
        Brief b = old.brief();
        BriefLimits l = b.limits();
        BriefLimits limits = new BriefLimits(
                l.budgetCents(),
                l.roomC(),
                l.coolantMaxC(),
                l.noiseMaxDBA(),
                l.labourMaxH(),
                l.leadMaxDays(),
                l.freeAreaMin(),
                new BriefLimits.ModLimits(List.of(), Optional.empty(), Optional.empty(), false, confidence),
                l.heat());
        Brief brief = new Brief(b.id(), b.title(), b.client(), b.chassis(), b.parts(), b.loop(), limits, b.terms());
        FitCase fitCase = new FitCase(old.catalog(), old.chassis(), brief);
        StringWriter out = new StringWriter();
        FitPaper answer = paper.apply(new PrintWriter(out, true));
        answer.begin();
        answer.add(new FitAnswer(fitCase, FitWish.ALL, FitView.ALL, Halt.NEVER));
        answer.end();
        return out.toString();
    }

    /** Gap 8; worst case 4.0, of which 4.0 are left; root sum square 2.12, of which 5.88 are left; clear, and sure. */
    @Test
    void aCardBehindAFrontStack() {
        Witness witness = new Answers(cardOf(267)).witness(SINGLE);
        Gap gap = gap(witness, "front radiator", "card");

        assertThat(gap.marginHmm()).isEqualTo(hmm(8));
        assertThat(gap.worstCaseHmm()).isEqualTo(hmm(4));
        assertThat(gap.rssHmm()).isEqualTo(hmm(5.88));
        assertThat(gap.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(gap.margin().nearest().terms())
                .extracting(Sum.Term::name)
                .containsExactly(
                        "card.body.length_mm",
                        "chassis.inside.board.pose.corner.y_mm",
                        "front:fans.frame.thickness_mm",
                        "front:radiator.body.thickness_mm");
        assertThat(gap.probability().orElseThrow()).isCloseTo(1, within(1e-9));
    }

    /**
     * A card 7 mm longer leaves 1 mm: with a standard deviation of √(1 + 1 + 0.25 + 2.25)/2 = 1.0607 mm that is kept with
     * Φ(0.9428) = 0.8271 (table of the normal curve).
     */
    @Test
    void aCardThatLeavesOne() {
        Witness witness = new Answers(cardOf(274)).witness(SINGLE);

        assertThat(gap(witness, "front radiator", "card").probability().orElseThrow())
                .isCloseTo(0.8271, within(1e-4));
        assertThat(witness.probability().orElseThrow()).isCloseTo(0.8271, within(1e-4));
        assertThat(witness.likeliestClash().one() + "-"
                        + witness.likeliestClash().other())
                .isEqualTo("card-front radiator");
    }

    @Test
    void inWords() {
        assertThat(told(cardOf(274), out -> new FitText(out, ORIGIN, Ink.PLAIN, 9), Optional.empty()))
                .contains("   fits:     likely, 82 %; likeliest to clash: card to front radiator, 82 %\n");
        assertThat(told(cardOf(274), out -> new FitText(out, ORIGIN, Ink.PLAIN, 9), Optional.of(82.7)))
                .contains("card to front radiator, 82 %\n");
        assertThat(told(cardOf(274), out -> new FitText(out, ORIGIN, Ink.PLAIN, 9), Optional.of(90.0)))
                .containsPattern("card to front radiator, 82 %; BELOW the brief's\n             confidence of 90 %\n");
        assertThat(told(cardOf(274), out -> new FitLines(out, ORIGIN, Ink.PLAIN), Optional.of(82.8)))
                .containsPattern("tightest 1 mm TIGHT; likely,\\s+82 %; BELOW the brief's confidence of 82.8 %\n");
    }

    @Test
    void inFull() {
        String key = new Answers(cardOf(274)).of(SINGLE).get(0).layout().key();

        assertThat(told(cardOf(274), out -> new FitFull(out, ORIGIN, Ink.PLAIN, key), Optional.empty()))
                .containsPattern("gap, mm +need +margin, mm +worst +rss +verdict +chance +between\n")
                .containsPattern(" 1 +0 +1 +-3 +-1.12 +TIGHT +likely +card - front radiator\n")
                .contains("   fits: likely, 82 %; likeliest to clash: card to front radiator, 82 %\n");
    }

    @Test
    void forPrograms() {
        String json = told(cardOf(274), out -> new FitJson(out, ORIGIN), Optional.of(90.0));

        assertThat(json)
                .contains("\"fit_probability\" : 0.827")
                .contains("\"chance\" : \"likely\"")
                .contains("\"below_confidence\" : true")
                .contains("\"likeliest_clash\" : {")
                .contains("\"worst_case_mm\" : -3")
                .contains("\"rss_mm\" : -1.12")
                .contains("\"probability\" : 0.827");
        assertThat(told(cardOf(274), out -> new FitJson(out, ORIGIN), Optional.empty()))
                .contains("\"below_confidence\" : false");
    }

    @Test
    void forSpreadsheets() {
        String csv = told(cardOf(274), out -> new FitCsv(out, ORIGIN), Optional.of(90.0));

        assertThat(csv.lines().findFirst().orElseThrow())
                .endsWith(",program,worst_case_mm,rss_mm,fit_probability,chance,likeliest_clash,below_confidence");
        assertThat(csv).contains(",loopwright,-3,-1.12,0.827,likely,card to front radiator,true");
    }

    /** What has no measured height is unknown, never fits, has no probability, and names the one thing to measure. */
    @Test
    void aPartWithoutAHeight() {
        SmallCase unknown = cardOf(267).with(SmallParts.memory("memory", Dimension.UNKNOWN));

        assertThat(unknown.fits().fits()).isEmpty();
        assertThat(unknown.fits().unknown())
                .isNotEmpty()
                .allSatisfy(u -> assertThat(u.measure()).containsExactly("memory.height_mm"));
        String json = told(unknown, out -> new FitJson(out, ORIGIN), Optional.empty());
        assertThat(json)
                .contains("\"layouts\" : [ ]")
                .contains("\"measure\" : [ \"memory.height_mm\" ],\n      \"fit_probability\" : null");
        assertThat(told(unknown, out -> new FitCsv(out, ORIGIN), Optional.empty()))
                .contains("unknown,,,,measure memory.height_mm,")
                .containsPattern(",loopwright,,,,unknown,,\r?\n");
        assertThat(told(unknown, out -> new FitText(out, ORIGIN, Ink.PLAIN, 9), Optional.empty()))
                .contains("once these are measured:\n")
                .contains(": memory.height_mm\n");
    }
}
