package loopwright.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import loopwright.catalog.part.Radiator;
import loopwright.loop.LoopBalance.Surroundings;
import loopwright.loop.air.AirBranch;
import loopwright.loop.air.AirDirection;
import loopwright.loop.air.AirResistance;
import loopwright.loop.air.CaseAir;
import loopwright.loop.air.CaseFlow;
import loopwright.loop.air.FanBank;
import loopwright.loop.exchange.RadiatorCore;
import loopwright.loop.fluid.Air;
import loopwright.loop.fluid.Liquid;
import loopwright.loop.water.HeadCurve;
import loopwright.loop.water.Passage;
import loopwright.testing.MachineParts;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Loops in air that is given, with a coolant that does not change with temperature: everything is linear then. */
class LoopBalanceTest {

    private static final double LITRE_PER_MIN = 1e-3 / 60;

    /** Water of 35 °C at any temperature. */
    private static final Liquid FROZEN = new Liquid() {
        @Override
        public double densityKgPerM3(double temperatureC) {
            return 994;
        }

        @Override
        public double heatCapacityJPerKgK(double temperatureC) {
            return 4179;
        }

        @Override
        public double viscosityPaS(double temperatureC) {
            return 0.72e-3;
        }

        @Override
        public double conductivityWPerMK(double temperatureC) {
            return 0.62;
        }

        @Override
        public double freezingC() {
            return 0;
        }
    };

    /** Loses 1 kPa at 1 L/min, with the square of the flow. */
    private static final Passage PASSAGE = (flow, liquid) -> 1000 * StrictMath.pow(flow / LITRE_PER_MIN, 2);

    /** Loses next to nothing. */
    private static final Passage WIDE = (flow, liquid) -> 1e-9 * flow;

    private static final RadiatorCore SINGLE = core("1x120");

    private static RadiatorCore core(String pattern) {
        Radiator radiator = MachineParts.radiator(pattern, 20, 16, 1);
        return RadiatorCore.of(radiator, MachineParts.PRACTICE.core());
    }

    /** A pump that holds a flow against anything that these loops resist. */
    private static HeadCurve steadyFlow(double litresPerMin) {
        double flow = litresPerMin * LITRE_PER_MIN;
        return new HeadCurve() {
            @Override
            public double headPa(double flowM3PerS) {
                return Math.max(0, 1e9 * (1 - flowM3PerS / flow));
            }

            @Override
            public double shutOffPa() {
                return 1e9;
            }

            @Override
            public double freeFlowM3PerS() {
                return flow;
            }
        };
    }

    /** Air through mounts, m³/s each, and none by openings. */
    private static CaseFlow through(List<AirDirection> directions, List<Double> flows) {
        FanBank fans = new FanBank(MachineParts.pressureFan(1300), 1, 1, Duty.FULL, 1.2);
        List<AirBranch> branches = directions.stream()
                .map(d -> new AirBranch("mount", d, fans, new AirBranch.Way(AirResistance.NONE, Optional.empty())))
                .toList();
        return new CaseFlow(new CaseAir(branches, List.of()), 0, flows);
    }

    private static Station.Cooler cooler(int branch, double airSideWPerK) {
        return new Station.Cooler("radiator " + branch, WIDE, SINGLE, branch, airSideWPerK);
    }

    private static Station.Source source(double heatW) {
        return new Station.Source("block", PASSAGE, heatW);
    }

    private static Steady solve(double litresPerMin, List<Station> stations, Surroundings around) {
        SteadyState state = new LoopBalance(FROZEN, steadyFlow(litresPerMin), stations, around).solve();
        assertThat(state).isInstanceOf(Steady.class);
        return (Steady) state;
    }

    /** A random loop of one or two sources and one to four radiators, in any order. */
    private record Loop(double litresPerMin, List<Station> stations, CaseFlow flow, double caseHeatW) {

        static Loop of(Random random) {
            List<AirDirection> directions = new ArrayList<>();
            List<Double> flows = new ArrayList<>();
            List<Station> stations = new ArrayList<>();
            stations.add(source(50 + 300 * random.nextDouble()));
            stations.add(new Station.Way("tube", PASSAGE));
            for (int i = 0; i < 4; i++) {
                directions.add(i == 0 || random.nextBoolean() ? AirDirection.IN : AirDirection.OUT);
                flows.add(0.005 + 0.03 * random.nextDouble());
                if (i == 0 || random.nextBoolean()) {
                    stations.add(random.nextInt(stations.size()), cooler(i, 5 + 15 * random.nextDouble()));
                }
            }
            stations.add(
                    random.nextInt(stations.size()), new Station.Source("card", PASSAGE, 200 * random.nextDouble()));
            return new Loop(
                    0.5 + 6 * random.nextDouble(), stations, through(directions, flows), 150 * random.nextDouble());
        }

        Steady in(Air air, double heatFactor) {
            List<Station> hotter = stations.stream()
                    .map(s -> s instanceof Station.Source b
                            ? new Station.Source(b.name(), b.passage(), heatFactor * b.heatW())
                            : s)
                    .toList();
            return solve(litresPerMin, hotter, new Surroundings(air, flow, heatFactor * caseHeatW));
        }
    }

    /** Property: twice the heat everywhere is twice the rise everywhere. */
    @ParameterizedTest
    @ValueSource(longs = {201, 202, 203})
    void risesGoWithTheHeat(long seed) {
        Random random = new Random(seed);
        Air air = Air.at(22, 0);
        for (int round = 0; round < 100; round++) {
            Loop loop = Loop.of(random);
            Steady once = loop.in(air, 1);
            Steady twice = loop.in(air, 2);
            String at = "seed %d round %d".formatted(seed, round);
            assertThat(twice.coolantOverRoomK()).as(at).isCloseTo(2 * once.coolantOverRoomK(), within(1e-9));
            assertThat(twice.caseOverRoomK()).as(at).isCloseTo(2 * once.caseOverRoomK(), within(1e-9));
            for (int i = 0; i < once.stops().size(); i++) {
                assertThat(twice.stops().get(i).outC() - 22)
                        .as(at)
                        .isCloseTo(2 * (once.stops().get(i).outC() - 22), within(1e-9));
            }
        }
    }

    /** Property: a room 10 K warmer, with air as dense, is 10 K everywhere. */
    @ParameterizedTest
    @ValueSource(longs = {211, 212, 213})
    void theRoomIsCarriedThrough(long seed) {
        Random random = new Random(seed);
        double kelvin = 273.15;
        for (int round = 0; round < 100; round++) {
            Loop loop = Loop.of(random);
            Steady cool = loop.in(Air.ofPressure(20, 100_000), 1);
            Steady warm = loop.in(Air.ofPressure(30, 100_000 * (30 + kelvin) / (20 + kelvin)), 1);
            String at = "seed %d round %d".formatted(seed, round);
            assertThat(warm.water().meanC()).as(at).isCloseTo(cool.water().meanC() + 10, within(1e-8));
            assertThat(warm.caseC()).as(at).isCloseTo(cool.caseC() + 10, within(1e-8));
        }
    }

    /** Property: one more radiator that breathes the room never warms the coolant where no other breathes the case. */
    @ParameterizedTest
    @ValueSource(longs = {221, 222, 223})
    void oneMoreRadiatorInRoomAirNeverWarms(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 200; round++) {
            CaseFlow flow = through(
                    List.of(AirDirection.IN, AirDirection.IN, AirDirection.IN),
                    List.of(0.02, 0.005 + 0.03 * random.nextDouble(), 0.03));
            List<Station> few = new ArrayList<>(List.of(source(300), cooler(0, 12), source(100), cooler(2, 9)));
            List<Station> more = new ArrayList<>(few);
            more.add(random.nextInt(5), cooler(1, 4 + 20 * random.nextDouble()));
            double litres = 1 + 5 * random.nextDouble();
            Surroundings around = new Surroundings(Air.at(25, 0), flow, 60);
            assertThat(solve(litres, more, around).coolantOverRoomK())
                    .as("seed %d round %d", seed, round)
                    .isLessThanOrEqualTo(solve(litres, few, around).coolantOverRoomK() + 1e-9);
        }
    }

    /** By hand: one radiator that blows in. Its heat is the source's; the case's rise is all heat over the air's capacity. */
    @Test
    void oneRadiatorTakesAllTheHeat() {
        Air air = Air.at(25, 0);
        CaseFlow flow = through(List.of(AirDirection.IN), List.of(0.02));
        Steady state = solve(4, List.of(source(100), cooler(0, 12)), new Surroundings(air, flow, 50));
        Steady.RadiatorState radiator = state.radiators().get(0);
        double airWPerK = 0.02 * air.densityKgPerM3() * air.heatCapacityJPerKgK();
        double coolantWPerK = 4 * LITRE_PER_MIN * 994 * 4179;

        assertThat(radiator.heatW()).isCloseTo(100, within(1e-9));
        assertThat(state.caseOverRoomK()).isCloseTo(150 / airWPerK, within(1e-9));
        assertThat(state.water().warmestC() - state.water().coldestC()).isCloseTo(100 / coolantWPerK, within(1e-4));
        assertThat(state.coolantOverRoomK()).isCloseTo(100 / radiator.meanConductanceWPerK(), within(1e-9));
        double entersC = state.water().warmestC() - 25;
        assertThat(radiator.effectiveness() * airWPerK * entersC).isCloseTo(100, within(1e-9));
        assertThat(radiator.outletC()).isCloseTo(25 + 100 / airWPerK, within(1e-9));
    }

    /** By hand: the same radiator blowing out breathes a case that only its own heat warms, and is that much warmer. */
    @Test
    void aRadiatorThatBlowsOutAddsTheCase() {
        Air air = Air.at(25, 0);
        List<AirDirection> ways = List.of(AirDirection.IN, AirDirection.OUT);
        CaseFlow flow = through(ways, List.of(0.02, 0.02));
        Steady in = solve(4, List.of(source(100), cooler(0, 12)), new Surroundings(air, flow, 60));
        Steady out = solve(4, List.of(source(100), cooler(1, 12)), new Surroundings(air, flow, 60));
        double caseK = 60 / (0.02 * air.densityKgPerM3() * air.heatCapacityJPerKgK());

        assertThat(out.caseOverRoomK()).isCloseTo(caseK, within(1e-9));
        assertThat(out.coolantOverRoomK() - in.coolantOverRoomK()).isCloseTo(caseK, within(1e-6));
    }

    /** Limits: with much coolant two equal radiators in a row are one of double; with little they fall short of it by little. */
    @Test
    void twoInARowAreOneOfDouble() {
        Air air = Air.at(25, 0);
        CaseFlow two = through(List.of(AirDirection.IN, AirDirection.IN), List.of(0.018, 0.018));
        CaseFlow one = through(List.of(AirDirection.IN), List.of(0.036));
        for (double litres : new double[] {1.5, 4, 12}) {
            Steady row =
                    solve(litres, List.of(source(200), cooler(0, 12), cooler(1, 12)), new Surroundings(air, two, 0));
            Station.Cooler large = new Station.Cooler("large", WIDE, core("2x120"), 0, 24);
            Steady whole = solve(litres, List.of(source(200), large), new Surroundings(air, one, 0));
            assertThat(row.coolantOverRoomK())
                    .as("%s L/min", litres)
                    .isCloseTo(whole.coolantOverRoomK(), Percentage.withPercentage(litres < 2 ? 3 : 1));
        }
    }

    /** A permutation of equal radiators is no change; of unequal ones in unequal air it is the order's small effect. */
    @Test
    void theOrderOfRadiatorsMattersLittle() {
        Air air = Air.at(25, 0);
        CaseFlow flow =
                through(List.of(AirDirection.IN, AirDirection.IN, AirDirection.OUT), List.of(0.02, 0.02, 0.035));
        Surroundings around = new Surroundings(air, flow, 80);
        double straight = solve(4, List.of(source(385), cooler(0, 12), cooler(1, 12), cooler(2, 20)), around)
                .coolantOverRoomK();
        double equal = solve(4, List.of(source(385), cooler(1, 12), cooler(0, 12), cooler(2, 20)), around)
                .coolantOverRoomK();
        double turned = solve(4, List.of(source(385), cooler(2, 20), cooler(1, 12), cooler(0, 12)), around)
                .coolantOverRoomK();

        assertThat(equal).isCloseTo(straight, within(1e-9));
        assertThat(turned).isNotEqualTo(straight).isCloseTo(straight, within(0.3));
    }

    @Test
    void saysWhyThereIsNoSteadyState() {
        Surroundings still = new Surroundings(Air.at(25, 0), through(List.of(AirDirection.IN), List.of(0.0)), 50);
        Surroundings bare = new Surroundings(Air.at(25, 0), through(List.of(AirDirection.IN), List.of(0.01)), 50);
        assertThat(why(steadyFlow(4), List.of(source(10), cooler(0, 12)), still))
                .isEqualTo("no air passes through the case");
        assertThat(why(steadyFlow(4), List.of(source(10)), bare))
                .isEqualTo("no radiator gets any air: nothing takes the heat out of the coolant");
        List<Station> shut = List.of(source(10), new Station.Way("valve", Passage.CLOSED), cooler(0, 12));
        assertThat(why(steadyFlow(4), shut, bare)).startsWith("the coolant does not move: ");
    }

    private static String why(HeadCurve pump, List<Station> stations, Surroundings around) {
        return ((SteadyState.None) new LoopBalance(FROZEN, pump, stations, around).solve()).why();
    }
}
