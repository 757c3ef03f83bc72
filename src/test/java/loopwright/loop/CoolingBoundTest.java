package loopwright.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import loopwright.loop.air.AirDirection;
import loopwright.loop.exchange.Crossflow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nothing that the model finds is cooler than its bound. */
class CoolingBoundTest {

    private static final int ROUNDS = 400;

    /** Above the rounding of a state of hundreds of kelvin, K. */
    private static final double SLACK_K = 1e-6;

    /** By hand: one kind alone is heat over conductance, besides what warms the air inside. */
    @Test
    void oneKindOfRadiatorAloneIsAQuotient() {
        assertThat(CoolingBound.leastOverRoomK(300, 80, 30, 0, 50)).isCloseTo(10, within(1e-12));
        // 300/30 + 80/40
        assertThat(CoolingBound.leastOverRoomK(300, 80, 0, 30, 40)).isCloseTo(12, within(1e-12));
        assertThat(CoolingBound.leastOverRoomK(300, 80, 0, 0, 40)).isInfinite();
    }

    /** By hand: air without end leaves both kinds the room, so their conductances add. */
    @Test
    void withoutLimitToTheAirConductancesAdd() {
        assertThat(CoolingBound.leastOverRoomK(300, 80, 20, 10, 1e12)).isCloseTo(10, within(1e-6));
    }

    /** By hand: 2·G_in·A/Q = 1.5 > 1: what blows out had better take nothing. */
    @Test
    void radiatorsInHotAirTakeNothing() {
        assertThat(CoolingBound.leastOverRoomK(200, 1000, 20, 10, 20)).isCloseTo(10, within(1e-12));
    }

    /** Property: the bound falls with both conductances and with the air, and rises with both heats. */
    @ParameterizedTest
    @ValueSource(longs = {31, 32})
    void theBoundGoesTheRightWay(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 5000; i++) {
            double[] x = {
                50 + 500 * random.nextDouble(),
                300 * random.nextDouble(),
                60 * random.nextDouble(),
                60 * random.nextDouble(),
                2 + 60 * random.nextDouble()
            };
            double bound = CoolingBound.leastOverRoomK(x[0], x[1], x[2], x[3], x[4]);
            double slack = 1e-9 * bound;
            String at = "seed %d round %d".formatted(seed, i);
            double f = 1 + random.nextDouble();
            assertThat(CoolingBound.leastOverRoomK(x[0] * f, x[1], x[2], x[3], x[4]))
                    .as(at)
                    .isGreaterThanOrEqualTo(bound - slack);
            assertThat(CoolingBound.leastOverRoomK(x[0], x[1] * f, x[2], x[3], x[4]))
                    .as(at)
                    .isGreaterThanOrEqualTo(bound - slack);
            assertThat(CoolingBound.leastOverRoomK(x[0], x[1], x[2] * f, x[3], x[4]))
                    .as(at)
                    .isLessThanOrEqualTo(bound + slack);
            assertThat(CoolingBound.leastOverRoomK(x[0], x[1], x[2], x[3] * f, x[4]))
                    .as(at)
                    .isLessThanOrEqualTo(bound + slack);
            assertThat(CoolingBound.leastOverRoomK(x[0], x[1], x[2], x[3], x[4] * f))
                    .as(at)
                    .isLessThanOrEqualTo(bound + slack);
        }
    }

    /** Over a grid of transfer units 0.05 to 6 of the air and coolant 0.2 to 20 times the air: never below the exact mean. */
    @Test
    void theConductanceIsNeverBelowTheExactOne() {
        double air = 25;
        for (double ntu = 0.05; ntu <= 6; ntu *= 1.02) {
            for (double ratio = 0.2; ratio <= 20; ratio *= 1.05) {
                double coolant = ratio * air;
                double least = Math.min(air, coolant);
                double perInlet = least * Crossflow.effectiveness(ntu * air / least, least / Math.max(air, coolant));
                double exact = perInlet / (1 - perInlet / (2 * coolant));
                assertThat(CoolingBound.conductanceWPerK(ntu * air, air))
                        .as("ntu %s, coolant %s times the air", ntu, ratio)
                        .isGreaterThanOrEqualTo(exact)
                        .isLessThanOrEqualTo(ntu * air * (1 + 1e-5));
            }
        }
    }

    /** With plenty of coolant it is no idle bound: within 6 % of the exact one up to 3 transfer units. */
    @Test
    void theConductancesBoundIsClose() {
        for (double ntu = 0.05; ntu <= 2; ntu *= 1.1) {
            double exact = Crossflow.effectiveness(ntu, 0.05);
            exact = exact / (1 - exact * 0.05 / 2);
            assertThat(CoolingBound.conductanceWPerK(ntu * 25, 25) / 25)
                    .as("ntu %s", ntu)
                    .isLessThan(exact * 1.06);
        }
    }

    @Test
    void nothingConductsWithoutAir() {
        assertThat(CoolingBound.conductanceWPerK(20, 0)).isZero();
        assertThat(CoolingBound.conductanceWPerK(0, 20)).isZero();
    }

    /**
     * Property: no machine is cooler than its bound, with exact conductances and with those that a search has; and no
     * radiator conducts more than a search takes it to. A tenth of the machines has a radiator that warms the coolant.
     */
    @ParameterizedTest
    @ValueSource(longs = {110_000, 120_000, 130_000, 140_000})
    void noMachineIsCoolerThanItsBound(long seed) {
        int warming = 0;
        for (long s = seed; s < seed + ROUNDS; s++) {
            Machine machine = new MachineDice(s).machine();
            if (MachineDice.solve(machine) instanceof Steady steady) {
                check("seed " + s, machine, steady);
                warming += steady.radiators().stream().anyMatch(r -> r.heatW() < 0) ? 1 : 0;
            }
        }
        assertThat(warming).isPositive();
    }

    private static void check(String at, Machine machine, Steady steady) {
        double[] exact = new double[2];
        double[] most = new double[2];
        for (Law.RadiatorOn on : Law.radiators(machine, steady)) {
            int kind = on.mount().direction() == AirDirection.IN ? 0 : 1;
            double bound = mostWPerK(machine, steady, on);
            assertThat(bound).as(at).isGreaterThanOrEqualTo(on.state().meanConductanceWPerK());
            exact[kind] += on.state().meanConductanceWPerK();
            most[kind] += bound;
        }
        double heatW = Law.loadW(machine);
        double air = steady.air().inM3PerS() * Law.heatPerM3(machine);
        double slack = SLACK_K * Math.max(1, steady.coolantOverRoomK());
        assertThat(CoolingBound.leastOverRoomK(heatW, machine.caseHeatW(), exact[0], exact[1], air))
                .as(at)
                .isLessThanOrEqualTo(steady.coolantOverRoomK() + slack);
        assertThat(CoolingBound.leastOverRoomK(heatW, machine.caseHeatW(), most[0], most[1], air))
                .as(at)
                .isLessThanOrEqualTo(steady.coolantOverRoomK() + slack);
    }

    /** The bound of a radiator's conductance as a search works it out, from the air through its core. */
    private static double mostWPerK(Machine machine, Steady steady, Law.RadiatorOn on) {
        double flow = steady.air().coreFlowM3PerS(on.branch());
        if (flow == 0) {
            return 0;
        }
        MachineModel model = MachineDice.model(machine.site());
        Machine.RadiatorAt at = on.mount().radiator().orElseThrow();
        double unmasked = 1 - at.maskedShare();
        double speed = flow / (model.core(at.radiator()).faceAreaM2() * unmasked);
        double airSide = unmasked * model.inAir(at.radiator()).airSideWPerK(speed);
        double warmC = Math.max(40, steady.water().warmestC());
        double waterSide = model.waterSideMostWPerK(machine.water(), at.radiator(), warmC);
        double conductance = model.core(at.radiator()).conductanceUAWPerK(airSide, waterSide);
        return CoolingBound.conductanceWPerK(conductance, flow * Law.heatPerM3(machine));
    }

    /**
     * Property: the same on loops that no machine has: hot cases, little coolant, radiators of both kinds in any order, many of
     * them warming the coolant. Solved here by going round the loop.
     */
    @ParameterizedTest
    @ValueSource(longs = {41, 42, 43})
    void noLoopIsCoolerThanItsBound(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 3000; i++) {
            LooseLoop loop = LooseLoop.of(random);
            assertThat(loop.boundK())
                    .as("seed %d round %d: %s", seed, i, loop)
                    .isLessThanOrEqualTo(loop.meanK() * (1 + 1e-9));
        }
    }
}
