package loopwright.plumbing.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Heading;
import loopwright.catalog.basis.PartPort.Way;
import loopwright.catalog.part.Tube;
import loopwright.catalog.standard.PlumbingPractice;
import loopwright.plumbing.CoolantOrder;
import loopwright.plumbing.FittingBill;
import loopwright.plumbing.LoopPart;
import loopwright.plumbing.LoopPart.Kind;
import loopwright.plumbing.LoopPlan;
import loopwright.plumbing.PlannedRun;
import loopwright.plumbing.Port;
import loopwright.plumbing.route.Route;
import loopwright.plumbing.route.Solid;
import loopwright.plumbing.route.Space;
import loopwright.plumbing.route.TubeShape;
import loopwright.plumbing.route.Where;
import loopwright.plumbing.rule.Finding.Verdict;
import loopwright.testing.MachineParts;
import org.junit.jupiter.api.Test;

/** Each rule on a small loop of reservoir, pump and roof radiator: kept, broken, at its limit, and its words. */
final class LoopRulesTest {

    private static final Tube TUBE = MachineParts.tube(10);
    private static final TubeShape SHAPE = new TubeShape(
            800, new TubeShape.Bends(3000, 0, 0, 1000), new TubeShape.Fitting(2500, 1000, 0), Optional.empty());

    /** A loop in a chassis of 400 mm: where its tank ends, where its radiator hangs. */
    private static final class Loop {
        private final int tankLow;
        private final int capZ;
        private final int radiatorTop;
        private final List<Solid> solids;

        Loop(int tankLow, int capZ, int radiatorTop, Solid... solids) {
            this.tankLow = tankLow;
            this.capZ = capZ;
            this.radiatorTop = radiatorTop;
            this.solids = List.of(solids);
        }

        LoopPlan plan() {
            Port tankIn = port("reservoir", "port-1", 10_000, 5000, tankLow, Heading.DOWN, Way.EITHER);
            Port tankOut = port("reservoir", "port-2", 13_000, 5000, tankLow, Heading.DOWN, Way.EITHER);
            Port pumpIn = port("pump", "inlet", 13_000, 20_000, 2000, Heading.FRONT, Way.IN);
            Port pumpOut = port("pump", "outlet", 16_000, 20_000, 2000, Heading.FRONT, Way.OUT);
            int face = radiatorTop - 3000;
            Port radIn = port("roof radiator", "port 1", 16_000, 30_000, face, Heading.DOWN, Way.EITHER);
            Port radOut = port("roof radiator", "port 2", 10_000, 30_000, face, Heading.DOWN, Way.EITHER);
            LoopPart tank = part("reservoir", Kind.RESERVOIR, tankLow, capZ, 300, tankIn, tankOut);
            LoopPart pump = part("pump", Kind.PUMP, 0, 4000, 20, pumpIn, pumpOut);
            LoopPart radiator = part("roof radiator", Kind.RADIATOR, face, radiatorTop, 125, radIn, radOut);
            List<PlannedRun> runs = List.of(run(tankOut, pumpIn), run(pumpOut, radIn), run(radOut, tankIn));
            Port cap = port("reservoir", "fill-cap", 11_500, 5000, capZ, Heading.UP, Way.IN);
            LoopPlan.Materials materials = new LoopPlan.Materials(
                    TUBE,
                    SHAPE,
                    new FittingBill(List.of(), List.of()),
                    new CoolantOrder(0, 0, 0),
                    new Space(new Where(40_000, 40_000, 40_000), solids, List.of()));
            return new LoopPlan(
                    List.of(tank, pump, radiator),
                    runs,
                    new LoopPlan.Openings(cap, List.of(), Optional.empty()),
                    materials,
                    List.of(),
                    List.of());
        }
    }

    private static Port port(String part, String id, int x, int y, int z, Heading out, Way way) {
        return new Port(part, id, new Where(x, y, z), out, way, false);
    }

    private static LoopPart part(String name, Kind kind, int low, int high, double mL, Port... ports) {
        return new LoopPart(
                name,
                kind,
                new Where(8000, 0, low),
                new Where(18_000, 10_000, high),
                List.of(ports),
                new LoopPart.Holds(mL, Optional.of(500)));
    }

    /** A run that goes straight from port to port: rules look at its points only. */
    private static PlannedRun run(Port from, Port to) {
        Route route = new Route(List.of(from.at(), to.at()), 0, 0, List.of(), 0);
        return new PlannedRun(from, to, Optional.of(route), List.of(), route.lengthHmm());
    }

    private static Finding finding(LoopPlan plan, String rule) {
        return LoopRules.of(plan, PlumbingPractice.USUAL).stream()
                .filter(f -> f.rule().equals("plumbing." + rule))
                .findFirst()
                .orElseThrow();
    }

    private static void says(LoopPlan plan, String rule, Verdict verdict, String sentence) {
        assertThat(finding(plan, rule).sentence()).isEqualTo(sentence);
        assertThat(finding(plan, rule).verdict()).isEqualTo(verdict);
    }

    /** The trade's own case: ports down at the roof, tank lower than the roof, cap 30 below the highest point. */
    @Test
    void aCapThirtyBelowTheRoofRadiatorNeedsTilt() {
        LoopPlan plan = new Loop(20_000, 36_000, 39_000).plan();
        says(
                plan,
                "cap-is-highest",
                Verdict.WARN,
                "The cap is 30 mm below the loop's highest point, roof radiator: needs tilt or a top plug to bleed.");
        says(
                plan,
                "air-finds-a-port",
                Verdict.WARN,
                "roof radiator: its top is 30 mm over its highest port, air stays there: tilt it while it bleeds.");
    }

    @Test
    void aCapAsHighAsTheLoopWillDo() {
        says(
                new Loop(20_000, 39_000, 39_000).plan(),
                "cap-is-highest",
                Verdict.OK,
                "The cap is 390 mm up, the loop's highest point, reservoir, 390 mm.");
        assertThat(finding(new Loop(20_000, 38_999, 39_000).plan(), "cap-is-highest")
                        .verdict())
                .isEqualTo(Verdict.WARN);
    }

    @Test
    void aFunnelWantsSixtyOverTheCap() {
        Solid shelf = new Solid("a shelf", new Where(0, 0, 30_000), new Where(40_000, 40_000, 30_100));
        assertThat(finding(new Loop(10_000, 24_000, 39_000, shelf).plan(), "cap-has-room")
                        .verdict())
                .isEqualTo(Verdict.OK);
        says(
                new Loop(10_000, 24_100, 39_000, shelf).plan(),
                "cap-has-room",
                Verdict.WARN,
                "59 mm are free over the cap, up to a shelf, a funnel wants 60 to 80: fill from the side or through a"
                        + " hose, or take off what is above.");
        says(
                new Loop(10_000, 30_000, 39_000).plan(),
                "cap-has-room",
                Verdict.OK,
                "100 mm are free over the cap, up to the wall.");
    }

    @Test
    void thePumpFillsByGravity() {
        says(
                new Loop(20_000, 36_000, 39_000).plan(),
                "pump-below-tank",
                Verdict.OK,
                "The pump's inlet is 20 mm up, the reservoir's outlet 200 mm, its bottom 200 mm: it fills by gravity.");
        assertThat(finding(new Loop(2000, 36_000, 39_000).plan(), "pump-below-tank")
                        .verdict())
                .isEqualTo(Verdict.OK);
        says(
                new Loop(1900, 36_000, 39_000).plan(),
                "pump-below-tank",
                Verdict.BROKEN,
                "The pump's inlet is 20 mm up, the reservoir's outlet 19 mm, its bottom 19 mm: the pump would run dry;"
                        + " it has to stand lower.");
    }

    @Test
    void airIsLeftInTheTankAndItIsHeld() {
        LoopPlan plan = new Loop(20_000, 36_000, 39_000).plan();
        says(plan, "tank-keeps-air", Verdict.OK, "Leave 30 to 45 mL of air in the tank's 300 mL (10 to 15 %).");
        says(plan, "tank-is-held", Verdict.OK, "The full tank weighs about 800 g: two points, with rubber.");
    }

    @Test
    void aLoopWithoutAFreePortHasNoDrain() {
        says(
                new Loop(20_000, 36_000, 39_000).plan(),
                "drain-is-lowest",
                Verdict.WARN,
                "No port is free for a drain: put a tee with a drain into the run nearest the lowest point, pump, 0 mm"
                        + " up.");
    }

    @Test
    void whatReachesBelowItsPortsIsTiltedOut() {
        says(
                new Loop(20_000, 36_000, 39_000).plan(),
                "pockets-drain",
                Verdict.WARN,
                "pump reaches 20 mm below its lowest port and cannot drain: tilt it out.");
    }

    @Test
    void aDrainWantsRoomInFrontAndBelow() {
        LoopPlan plan = new Loop(20_000, 36_000, 39_000).plan();
        Port low = port("reservoir", "side", 18_000, 5000, 6000, Heading.RIGHT, Way.EITHER);
        says(
                withDrain(plan, low),
                "drain-has-room",
                Verdict.OK,
                "At the drain 220 mm are free in front, up to the wall, and 60 mm down to the floor.");
        Port lower = port("reservoir", "side", 18_000, 5000, 5900, Heading.RIGHT, Way.EITHER);
        assertThat(finding(withDrain(plan, lower), "drain-has-room").verdict()).isEqualTo(Verdict.WARN);
        assertThat(finding(withDrain(plan, lower), "drain-is-lowest").verdict()).isEqualTo(Verdict.WARN);
        Port lowest = port("reservoir", "side", 18_000, 5000, 1500, Heading.RIGHT, Way.EITHER);
        assertThat(finding(withDrain(plan, lowest), "drain-is-lowest").verdict())
                .isEqualTo(Verdict.OK);
    }

    private static LoopPlan withDrain(LoopPlan plan, Port drain) {
        LoopPlan.Openings openings = new LoopPlan.Openings(plan.openings().fill(), List.of(drain), Optional.of(drain));
        return new LoopPlan(plan.parts(), plan.runs(), openings, plan.materials(), List.of(), List.of());
    }

    @Test
    void marksAreKeptAndTheTankFeedsThePump() {
        LoopPlan plan = new Loop(20_000, 36_000, 39_000).plan();
        says(plan, "marked-ports", Verdict.OK, "2 ports are marked in or out; all that are used are used so.");
        says(plan, "tank-feeds-pump", Verdict.OK, "Behind the reservoir comes the pump.");
        List<PlannedRun> wrong =
                plan.runs().stream().map(r -> run(r.to(), r.from())).toList();
        LoopPlan against = new LoopPlan(plan.parts(), wrong, plan.openings(), plan.materials(), List.of(), List.of());
        says(against, "marked-ports", Verdict.BROKEN, "Against their marks: pump inlet, pump outlet.");
        LoopPlan turned = new LoopPlan(
                List.of(plan.parts().get(0), plan.parts().get(2), plan.parts().get(1)),
                plan.runs(),
                plan.openings(),
                plan.materials(),
                List.of(),
                List.of());
        says(turned, "tank-feeds-pump", Verdict.BROKEN, "Behind the reservoir comes the roof radiator.");
    }

    @Test
    void aBlockedRunIsSaid() {
        LoopPlan plan = new Loop(20_000, 36_000, 39_000).plan();
        PlannedRun first = plan.runs().get(0);
        PlannedRun blocked =
                new PlannedRun(first.from(), first.to(), Optional.empty(), List.of("card", "supply"), 1000);
        LoopPlan with = new LoopPlan(
                plan.parts(),
                List.of(blocked, plan.runs().get(1), plan.runs().get(2)),
                plan.openings(),
                plan.materials(),
                List.of(),
                List.of());
        says(
                with,
                "runs-have-a-way",
                Verdict.BROKEN,
                "No way for tube from reservoir port-2 to pump inlet: blocked by card and supply.");
    }
}
