package loopwright.power.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Lead;
import loopwright.catalog.part.Plug;
import loopwright.power.header.WiringTask.There;
import loopwright.quantity.Dimension;
import org.junit.jupiter.api.Test;

class WiringSearchTest {

    static final WiringLimits LIMITS = new WiringLimits(80, 4500, 8000, 1500, 2200);

    static Lead lead(String id, Lead.Kind kind, Plug from, int outlets, double limitA, long cents) {
        return new Lead(
                id,
                id,
                Optional.empty(),
                new Purchase(cents, 1),
                kind,
                from,
                kind == Lead.Kind.ADAPTOR || (from == Plug.SATA && kind == Lead.Kind.SPLITTER) ? Plug.SATA : Plug.FAN_4,
                outlets,
                100,
                limitA > 0 ? Optional.of(limitA) : Optional.empty(),
                Optional.empty());
    }

    private static final Lead SPLIT_5 = lead("split-5", Lead.Kind.SPLITTER, Plug.FAN_4, 5, 0, 500);
    private static final Lead SPLIT_2 = lead("split-2", Lead.Kind.SPLITTER, Plug.FAN_4, 2, 1, 300);
    private static final Lead HUB_6 = lead("hub-6", Lead.Kind.HUB, Plug.SATA, 6, 4.5, 1500);
    private static final Lead SPLIT_SATA = lead("split-sata", Lead.Kind.SPLITTER, Plug.SATA, 2, 4.5, 600);
    private static final Lead ADAPT = lead("adapt", Lead.Kind.ADAPTOR, Plug.PERIPHERAL_4, 1, 4.5, 490);

    private static FanGroup fans(String name, int count, double currentA, double startA) {
        Fan fan = new Fan(
                "fan-" + name,
                "fan",
                Optional.empty(),
                new Purchase(1, 1),
                new Fan.Frame(120, Dimension.ofHmm(2500), 100),
                new Fan.Air(1000, 20, List.of(), 20),
                new Fan.Electric(currentA, startA));
        return FanGroup.of(name, fan, count, 1.5);
    }

    private static HeaderAt header(String id, int limitMilliA) {
        return new HeaderAt(id, false, limitMilliA);
    }

    private static WiringTask task(List<FanGroup> fans, List<HeaderAt> headers, int sata, Lead... leads) {
        return new WiringTask(fans, Optional.empty(), new There(headers, sata, 0), List.of(leads), LIMITS);
    }

    /** Five fans of 0.12 A start at 0.9 A: more than 80 % of a header of 1 A, less than 80 % of a hub's 4.5 A. */
    @Test
    void fiveFansAreTooManyForAHeaderButNotForAHub() {
        List<FanGroup> five = List.of(fans("front", 5, 0.12, 0));
        List<HeaderAt> one = List.of(header("fan-1", 1000));

        assertThat(five.get(0).startMilliA()).isEqualTo(180);
        assertThat(WiringSearch.find(task(five, one, 1, SPLIT_5))).isEmpty();
        WiringPlan plan = WiringSearch.find(task(five, one, 1, SPLIT_5, HUB_6)).orElseThrow();
        assertThat(plan.leads()).containsExactly(HUB_6);
        assertThat(plan.branches().get(0).startMilliA()).isEqualTo(900);
        assertThat(LIMITS.planned(plan.branches().get(0).limitMilliA())).isEqualTo(3600);
        assertThat(plan.cents()).isEqualTo(1500);
        assertThat(plan.sata()).isEqualTo(1);
    }

    /** 0.80 A on 1 A are just right; a thousandth more is not. */
    @Test
    void exactlyEightyPercentIsAllowed() {
        List<HeaderAt> one = List.of(header("fan-1", 1000));
        assertThat(WiringSearch.find(task(List.of(fans("a", 5, 0.1, 0.16)), one, 0, SPLIT_5)))
                .isPresent();
        assertThat(WiringSearch.find(task(List.of(fans("a", 4, 0.1, 0.16), fans("b", 1, 0.1, 0.161)), one, 0, SPLIT_5)))
                .isEmpty();
        assertThat(WiringSearch.find(task(List.of(fans("a", 5, 0.1, 0.16)), List.of(header("x", 999)), 0, SPLIT_5)))
                .isEmpty();
    }

    /** The splitter's own limit counts where it is less than the header's: 0.8 A of starts are too much for 1 A at 2. */
    @Test
    void theWeakerOfHeaderAndSplitterCounts() {
        List<HeaderAt> strong = List.of(header("fan-1", 3000));
        assertThat(WiringSearch.find(task(List.of(fans("a", 2, 0.2, 0.4)), strong, 0, SPLIT_2)))
                .isPresent();
        assertThat(WiringSearch.find(task(List.of(fans("a", 2, 0.2, 0.401)), strong, 0, SPLIT_2)))
                .isEmpty();
    }

    /** A hub that says 10 A still hangs on a SATA plug of 4.5 A: 3.6 A of starts are right, 3.62 A are not. */
    @Test
    void aHubGivesNoMoreThanItsPlug() {
        Lead strong = lead("hub-strong", Lead.Kind.HUB, Plug.SATA, 10, 10, 100);
        List<HeaderAt> one = List.of(header("fan-1", 1000));
        assertThat(WiringSearch.find(task(List.of(fans("a", 2, 1, 1.8)), one, 1, strong)))
                .isPresent();
        assertThat(WiringSearch.find(task(List.of(fans("a", 2, 1, 1.81)), one, 1, strong)))
                .isEmpty();
    }

    @Test
    void aFanBeyondTheSpecificationIsRefused() {
        List<HeaderAt> strong = List.of(header("fan-1", 5000));
        assertThat(WiringSearch.find(task(List.of(fans("a", 1, 1.5, 2.2)), strong, 0)))
                .isPresent();
        WiringTask steady = task(List.of(fans("a", 1, 1.501, 2)), strong, 0);
        assertThat(WiringSearch.find(steady)).isEmpty();
        assertThat(WiringSearch.find(task(List.of(fans("a", 1, 1.5, 2.201)), strong, 0)))
                .isEmpty();
        assertThat(WiringShortfall.of(steady, 1000).missing())
                .isEqualTo("fan-a draws 1.50 A, starting 2.00 A: a fan may draw 1.50 A and 2.20 A");
    }

    @Test
    void theCheapestLeadsThenTheFewest() {
        List<FanGroup> four = List.of(fans("a", 4, 0.05, 0));
        List<HeaderAt> two = List.of(header("fan-1", 1000), header("fan-2", 1000));
        assertThat(WiringSearch.find(task(four, two, 1, SPLIT_5, SPLIT_2, HUB_6))
                        .orElseThrow()
                        .leads())
                .containsExactly(SPLIT_5);
        Lead dear = lead("split-5-dear", Lead.Kind.SPLITTER, Plug.FAN_4, 5, 0, 600);
        assertThat(WiringSearch.find(task(four, two, 1, dear, SPLIT_2))
                        .orElseThrow()
                        .leads())
                .as("two at 3.00 cost as much as one at 6.00")
                .containsExactly(dear);
    }

    private static WiringTask pumped(PumpFeed.Way way, int startMilliA, List<HeaderAt> headers, int sata, int old) {
        return new WiringTask(
                List.of(fans("a", 1, 0.1, 0)),
                Optional.of(new PumpFeed("pump-x", way, true, startMilliA)),
                new There(headers, sata, old),
                List.of(SPLIT_2, HUB_6, SPLIT_SATA),
                LIMITS);
    }

    @Test
    void aPumpHasAHeaderOfItsOwn() {
        HeaderAt pump = new HeaderAt("pump", true, 2000);
        WiringPlan plan = WiringSearch.find(
                        pumped(PumpFeed.Way.HEADER, 1600, List.of(header("fan-1", 1000), pump), 0, 0))
                .orElseThrow();
        assertThat(plan.pump().orElseThrow().header()).isEqualTo(pump);
        assertThat(plan.branches()).extracting(b -> b.header().id()).containsExactly("fan-1");
        assertThat(WiringSearch.find(pumped(PumpFeed.Way.HEADER, 1601, List.of(header("fan-1", 1000), pump), 0, 0)))
                .isEmpty();
        assertThat(WiringSearch.find(pumped(PumpFeed.Way.HEADER, 100, List.of(header("fan-1", 1000)), 4, 0)))
                .as("the fan would share it")
                .isEmpty();
    }

    @Test
    void aPumpOnTheSupplyStillHasItsTurnsCounted() {
        List<HeaderAt> two = List.of(header("fan-1", 1000), new HeaderAt("pump", true, 2000));
        WiringPlan plan =
                WiringSearch.find(pumped(PumpFeed.Way.SATA, 2200, two, 1, 0)).orElseThrow();
        assertThat(plan.pump().orElseThrow().header().id()).isEqualTo("fan-1");
        assertThat(plan.sata()).isEqualTo(1);
        assertThat(WiringSearch.find(pumped(PumpFeed.Way.SATA, 2200, two, 0, 0)))
                .isEmpty();
        assertThat(WiringSearch.find(pumped(PumpFeed.Way.SATA, 4501, two, 1, 0)))
                .isEmpty();
        assertThat(WiringSearch.find(pumped(PumpFeed.Way.PERIPHERAL, 8000, two, 0, 1)))
                .isPresent();
        assertThat(WiringSearch.find(pumped(PumpFeed.Way.PERIPHERAL, 8001, two, 0, 1)))
                .isEmpty();
    }

    @Test
    void aMissingPlugIsNamedWithItsCheapestCure() {
        List<FanGroup> six = List.of(fans("a", 6, 0.2, 0));
        List<HeaderAt> one = List.of(header("fan-1", 1000));
        WiringShortfall noSata = WiringShortfall.of(task(six, one, 0, HUB_6, SPLIT_SATA), 1000);
        assertThat(noSata.missing()).isEqualTo("1 free SATA plug");
        assertThat(noSata.remedy()).isEqualTo("1 split-sata");
        assertThat(noSata.leads()).containsExactly(SPLIT_SATA);

        WiringTask old =
                new WiringTask(six, Optional.empty(), new There(one, 0, 1), List.of(HUB_6, SPLIT_SATA, ADAPT), LIMITS);
        assertThat(WiringShortfall.of(old, 1000).remedy()).isEqualTo("1 adapt");

        WiringShortfall noHeader = WiringShortfall.of(task(List.of(fans("a", 3, 0.2, 0)), one, 0), 1000);
        assertThat(noHeader.missing()).isEqualTo("2 fan headers");
        assertThat(noHeader.remedy()).isEqualTo("a board with 3 headers");

        assertThat(WiringShortfall.of(pumped(PumpFeed.Way.HEADER, 1601, one, 0, 0), 1000)
                        .missing())
                .isEqualTo("a header for pump-x: it starts at 1.60 A, more than the planned share of any header");
    }

    @Test
    void nothingWantsNothing() {
        assertThat(WiringSearch.find(task(List.of(), List.of(), 0)))
                .hasValueSatisfying(p -> assertThat(p.branches()).isEmpty());
    }
}
