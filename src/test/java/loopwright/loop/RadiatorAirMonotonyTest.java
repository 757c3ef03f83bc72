package loopwright.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.Random;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import loopwright.loop.exchange.SectionFace;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Properties over seeded random radiators, fans, duties and panels. */
class RadiatorAirMonotonyTest {

    private static final int ROUNDS = 400;

    /** The root finder's accuracy: what "never less" may be short of, relative. */
    private static final double SLACK = 1e-10;

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void moreDutyNeverConductsLess(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < ROUNDS; round++) {
            Case c = new Case(random);
            double slow = 10 + 90 * random.nextDouble();
            double fast = slow + (100 - slow) * random.nextDouble();
            OperatingPoint low = c.at(slow, c.path);
            OperatingPoint high = c.at(fast, c.path);
            assertNotLess(high.conductanceWPerK(), low.conductanceWPerK(), seed, round);
            assertNotLess(high.airflowM3PerH(), low.airflowM3PerH(), seed, round);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23})
    void moreFreeAreaNeverConductsLess(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < ROUNDS; round++) {
            Case c = new Case(random);
            double duty = 10 + 90 * random.nextDouble();
            double opened = c.path.openShare() + (1 - c.path.openShare()) * random.nextDouble();
            AirPath wider = new AirPath(opened, c.path.filterShare(), c.path.coverShare());
            AirPath bare = new AirPath(opened, OptionalDouble.empty(), OptionalDouble.empty());
            double asIs = c.at(duty, c.path).conductanceWPerK();
            double wide = c.at(duty, wider).conductanceWPerK();
            assertNotLess(wide, asIs, seed, round);
            assertNotLess(c.at(duty, bare).conductanceWPerK(), wide, seed, round);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33})
    void theUpperBoundIsNeverPassed(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < ROUNDS; round++) {
            Case c = new Case(random);
            double duty = 10 + 90 * random.nextDouble();
            assertThat(RadiatorAir.conductanceUpperBoundWPerK(c.radiator, c.fan, c.layers))
                    .as("seed %d round %d", seed, round)
                    .isGreaterThanOrEqualTo(c.at(duty, c.path).conductanceWPerK());
        }
    }

    /** Property: equal sections side by side share nothing, so N of them conduct N times as much. */
    @Test
    void conductanceGoesWithTheNumberOfSections() {
        FanBank bank = new FanBank(SampleParts.PRESSURE_120, 1, new Duty(60));
        double one = RadiatorAir.operatingPoint(SampleParts.radiator(new Pattern(1, 120), 33, 13), bank, AirPath.OPEN)
                .conductanceWPerK();
        double three = RadiatorAir.operatingPoint(SampleParts.radiator(new Pattern(3, 120), 33, 13), bank, AirPath.OPEN)
                .conductanceWPerK();
        assertThat(three).isCloseTo(3 * one, within(1e-12));
    }

    /** Fan laws (AMCA 201): Q ∝ n, p ∝ n²; with 0.8 of the speed 0.8 of the flow and 0.64 of the pressure. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.8})
    void fanLawsScaleTheCurve(double share) {
        FallingCurve full = new FanBank(SampleParts.PRESSURE_120, 1, Duty.FULL).section();
        FallingCurve slow = new FanBank(SampleParts.PRESSURE_120, 1, new Duty(100 * share)).section();
        for (double flow = 0; flow <= 117; flow += 3.9) {
            assertThat(slow.at(share * flow)).isCloseTo(share * share * full.at(flow), within(1e-9));
        }
        assertThat(slow.last().x()).isCloseTo(117 * share, within(1e-9));
    }

    @Test
    void belowItsLeastDutyAFanTurnsAtThat() {
        FanBank told5 = new FanBank(SampleParts.PRESSURE_120, 1, new Duty(5));
        assertThat(told5.speedShare()).isEqualTo(0.1);
    }

    @Test
    void facesOfOtherSizesGoWithTheSquare() {
        assertThat(SectionFace.areaM2(120)).isEqualTo(0.0132);
        assertThat(SectionFace.areaM2(140)).isEqualTo(0.0182);
        assertThat(SectionFace.areaM2(80)).isCloseTo(0.0132 * 4 / 9, Percentage.withPercentage(1e-9));
    }

    private static void assertNotLess(double more, double less, long seed, int round) {
        assertThat(more).as("seed %d round %d", seed, round).isGreaterThanOrEqualTo(less * (1 - SLACK));
    }

    /** One random radiator with fans and a path. */
    private static final class Case {
        final Radiator radiator;
        final Fan fan;
        final int layers;
        final AirPath path;

        Case(Random random) {
            int sizeMm = Pattern.SIZES_MM.get(random.nextInt(Pattern.SIZES_MM.size()));
            radiator = SampleParts.radiator(
                    new Pattern(1 + random.nextInt(5), sizeMm),
                    5 + 95 * random.nextDouble(),
                    5 + 25 * random.nextDouble());
            fan = SampleParts.fan(sizeMm, 1000, 20 + 150 * random.nextDouble(), 1 + 50 * random.nextDouble());
            layers = 1 + random.nextInt(2);
            path = new AirPath(share(random), maybe(random), maybe(random));
        }

        OperatingPoint at(double dutyPercent, AirPath through) {
            return RadiatorAir.operatingPoint(radiator, new FanBank(fan, layers, new Duty(dutyPercent)), through);
        }

        private static OptionalDouble maybe(Random random) {
            return random.nextBoolean() ? OptionalDouble.of(share(random)) : OptionalDouble.empty();
        }

        private static double share(Random random) {
            return 0.02 + 0.98 * random.nextDouble();
        }
    }
}
