package loopwright.answer;

import static loopwright.testing.Mm.mm;
import static loopwright.testing.SmallMods.mount;
import static loopwright.testing.SmallMods.seat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import loopwright.answer.Checklist.Kept;
import loopwright.answer.Checklist.Line;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.BriefLimits;
import loopwright.catalog.brief.BriefLimits.HeatLimits;
import loopwright.catalog.brief.BriefLimits.ModLimits;
import loopwright.catalog.part.GraphicsCard;
import loopwright.fit.FitCase;
import loopwright.fit.FitWish;
import loopwright.rank.Order;
import loopwright.rank.RankResult.Ranked;
import loopwright.testing.SmallCase;
import loopwright.testing.SmallMods.Spot;
import loopwright.testing.SmallParts;
import org.junit.jupiter.api.Test;

/** A small build under briefs that are looser, exactly as tight, and tighter than what it comes to. */
class ChecklistTest {

    private static final double EXACT = 1e-9;

    private static final ModLimits ANY_MOD = new ModLimits(List.of(), Optional.empty(), Optional.empty(), false);

    /** One double radiator at the front; the card cools itself. */
    private static final FitCase CASE = new SmallCase(400, 320)
            .mount(Face.FRONT, mount("front", Axis.Z, seat("2x120", new Spot(150, 100))))
            .with(SmallParts.radiator("thin", "2x120", mm(30)))
            .with(SmallParts.fan("fan", 120, mm(25)))
            .with(coolingItself(SmallParts.card("card", mm(150), 40)))
            .fitCase();

    private static final Ranked CHEAPEST = cheapest();

    private static GraphicsCard coolingItself(GraphicsCard card) {
        return new GraphicsCard(
                card.id(),
                card.title(),
                card.variantOf(),
                card.buy(),
                GraphicsCard.Cooling.AIR,
                card.body(),
                new GraphicsCard.Power(card.power().workW(), card.power().worstW(), 1, 0, Optional.empty()),
                card.performance());
    }

    private static Ranked cheapest() {
        RankAnswer answer = new RankAnswer(
                CASE, FitWish.ALL, new RankAnswer.RankWish(Order.COST, 1, Optional.empty()), Optional::empty);
        return answer.result().listed().get(0);
    }

    /** The limits of a brief that wants little. */
    private static BriefLimits limits(double coolantMaxC, HeatLimits heat) {
        return new BriefLimits(
                Optional.empty(),
                28,
                coolantMaxC,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                0.3,
                ANY_MOD,
                Optional.of(heat));
    }

    private static BriefLimits work(long budgetCents, double labourH, int days) {
        return new BriefLimits(
                Optional.of(budgetCents),
                28,
                60,
                Optional.empty(),
                Optional.of(labourH),
                Optional.of(days),
                0.3,
                ANY_MOD,
                Optional.empty());
    }

    private static Inspection inspection(BriefLimits limits) {
        Brief old = CASE.brief();
        Brief brief = new Brief(
                old.id(), old.title(), old.client(), old.chassis(), old.parts(), old.loop(), limits, old.terms());
        return new Inspection(new FitCase(CASE.catalog(), CASE.chassis(), brief), CHEAPEST);
    }

    private static Line line(Inspection inspection, String start) {
        return Checklist.of(inspection).stream()
                .filter(l -> l.line().startsWith(start))
                .findFirst()
                .orElseThrow();
    }

    private static void expect(Line line, Kept kept, double margin) {
        assertThat(line.kept()).as(line.toString()).isEqualTo(kept);
        assertThat(line.margin().orElseThrow()).as(line.toString()).isCloseTo(margin, within(EXACT));
    }

    /**
     * Eleven parts at 10 (chassis, seven for the machine and its loop, a radiator, two fans), 2 m of tube and 1 L of coolant at
     * 10 each: 140. Fifteen hours at 42: 630. With a tenth on top, 847.
     */
    @Test
    void theBudgetIsKeptToTheCent() {
        expect(line(inspection(work(90000, 16, 30)), "budget"), Kept.KEPT, 53);
        expect(line(inspection(work(84700, 16, 30)), "budget"), Kept.KEPT, 0);
        expect(line(inspection(work(84699, 16, 30)), "budget"), Kept.BROKEN, -0.01);
        assertThat(line(inspection(work(84699, 16, 30)), "budget").line()).isEqualTo("budget, EUR");
        assertThat(line(inspection(work(84699, 16, 30)), "budget").wanted()).isEqualTo("at most 846.99");
        assertThat(line(inspection(work(84699, 16, 30)), "budget").given()).isEqualTo("847");
    }

    /** 900 minutes of assembly and nothing done to the case. */
    @Test
    void hoursAreKeptToTheMinute() {
        expect(line(inspection(work(90000, 16, 30)), "hands-on"), Kept.KEPT, 1);
        expect(line(inspection(work(90000, 15, 30)), "hands-on"), Kept.KEPT, 0);
        expect(line(inspection(work(90000, 14.75, 30)), "hands-on"), Kept.BROKEN, -0.25);
    }

    /** Parts take 3 days to come, 15 hours are 2.5 days of 6 hours. */
    @Test
    void daysAreWhole() {
        expect(line(inspection(work(90000, 16, 7)), "days"), Kept.KEPT, 1);
        expect(line(inspection(work(90000, 16, 6)), "days"), Kept.KEPT, 0);
        expect(line(inspection(work(90000, 16, 5)), "days"), Kept.BROKEN, -1);
    }

    private static BriefLimits asSureAs(double percent) {
        BriefLimits any = limits(60, HeatLimits.NONE);
        return new BriefLimits(
                any.budgetCents(),
                any.roomC(),
                any.coolantMaxC(),
                any.noiseMaxDBA(),
                any.labourMaxH(),
                any.leadMaxDays(),
                any.freeAreaMin(),
                new ModLimits(List.of(), Optional.empty(), Optional.empty(), false, Optional.of(percent)),
                any.heat());
    }

    /** Everything in the small case is exact and far apart: nothing can meet. */
    @Test
    void theChanceIsALineWhereTheBriefAsksForOne() {
        expect(line(inspection(asSureAs(99.9)), "chance"), Kept.KEPT, 0.1);
        assertThat(line(inspection(asSureAs(99.9)), "chance").line()).isEqualTo("chance that all fits, %");
        assertThat(line(inspection(asSureAs(99.9)), "chance").wanted()).isEqualTo("at least 99.9");
        assertThat(line(inspection(asSureAs(99.9)), "chance").given()).isEqualTo("100");
        assertThat(Checklist.of(inspection(limits(60, HeatLimits.NONE))))
                .noneMatch(l -> l.line().startsWith("chance"));
    }

    @Test
    void theCoolantIsKeptToTheHundredth() {
        double givenC = 28 + CHEAPEST.build().outcome().coolantOverRoomCentiK() / 100.0;
        expect(line(inspection(limits(givenC + 2, HeatLimits.NONE)), "coolant"), Kept.KEPT, 2);
        expect(line(inspection(limits(givenC, HeatLimits.NONE)), "coolant"), Kept.KEPT, 0);
        expect(line(inspection(limits(givenC - 0.01, HeatLimits.NONE)), "coolant"), Kept.BROKEN, -0.01);
    }

    /** The mount is fully open, the brief wants three tenths. */
    @Test
    void theFreeAreaHasAMargin() {
        expect(line(inspection(limits(60, HeatLimits.NONE)), "free area of front"), Kept.KEPT, 0.7);
    }

    private static HeatLimits heat(double processorMaxC, double cardMaxC, double caseMaxC) {
        return new HeatLimits(
                Optional.empty(), Optional.of(processorMaxC), Optional.of(cardMaxC), Optional.of(caseMaxC));
    }

    @Test
    void nobodyKnowsACardThatCoolsItself() {
        Line card = line(inspection(limits(60, heat(100, 110, 80))), "card, C");
        assertThat(card.kept()).isEqualTo(Kept.UNKNOWN);
        assertThat(card.margin()).isEmpty();
        assertThat(card.wanted()).isEqualTo("at most 110");
        assertThat(card.given()).isEqualTo("no block: its own cooler");
    }

    /** The block's step over the coolant is 0.05 K/W and the workshop's share of it that flow changes, of 100 W. */
    @Test
    void theProcessorIsHotterThanTheCoolant() {
        Inspection loose = inspection(limits(60, heat(100, 110, 80)));
        double coolantC = loose.state().water().meanC();
        Line kept = line(loose, "processor, C");
        assertThat(kept.kept()).isEqualTo(Kept.KEPT);
        double givenC = 100 - kept.margin().orElseThrow();
        assertThat(givenC - coolantC).isBetween(4.0, 8.0);
        Line broken = line(inspection(limits(60, heat(givenC - 1, 110, 80))), "processor, C");
        expect(broken, Kept.BROKEN, -1);
    }

    @Test
    void theAirInsideIsALineOfItsOwn() {
        Inspection loose = inspection(limits(60, heat(100, 110, 80)));
        double givenC = loose.state().caseC();
        expect(line(loose, "case air"), Kept.KEPT, 80 - givenC);
        expect(line(inspection(limits(60, heat(100, 110, givenC - 0.5))), "case air"), Kept.BROKEN, -0.5);
    }

    @Test
    void linesThatNobodyWantsAreLeftOut() {
        assertThat(Checklist.of(inspection(limits(60, HeatLimits.NONE))).stream()
                        .map(Line::line))
                .noneMatch(l -> l.startsWith("budget") || l.startsWith("noise") || l.startsWith("card, C"))
                .contains("board", "processor", "card", "memory", "processor block", "coolant, C");
    }
}
