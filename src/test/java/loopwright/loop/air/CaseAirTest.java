package loopwright.loop.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import loopwright.loop.Duty;
import loopwright.testing.MachineParts;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Mounts and openings in balance with the pressure inside. */
class CaseAirTest {

    private static final AirResistance PANEL = new AirResistance(10, 4000);

    private static AirBranch branch(AirDirection direction, int row, AirResistance path) {
        FanBank fans = new FanBank(MachineParts.pressureFan(1300), row, 1, Duty.FULL, 1.2);
        return new AirBranch("mount", direction, fans, new AirBranch.Way(path, Optional.empty()));
    }

    private static CaseFlow balance(List<AirBranch> branches, AirResistance... openings) {
        return new CaseAir(branches, List.of(openings)).balance();
    }

    /** By symmetry: as strong in as out leaves the pressure at the room's, and the openings without flow. */
    @Test
    void equalFansInAndOutBalance() {
        CaseFlow flow = balance(
                List.of(branch(AirDirection.IN, 2, PANEL), branch(AirDirection.OUT, 2, PANEL)),
                new AirResistance(0, 1e5));

        assertThat(flow.insidePa()).isCloseTo(0, within(1e-9));
        assertThat(flow.fanInM3PerS()).isCloseTo(flow.fanOutM3PerS(), within(1e-12));
        assertThat(flow.fanInM3PerS())
                .isCloseTo(branch(AirDirection.IN, 2, PANEL).coreFlowM3PerS(0, 0), within(1e-12));
        assertThat(flow.openingM3PerS(0)).isCloseTo(0, within(1e-6));
    }

    /** A mirror: the same fans the other way give the same flows and the opposite pressure. */
    @Test
    void turningEverythingRoundTurnsThePressureRound() {
        AirResistance seams = new AirResistance(3, 8e4);
        CaseFlow in = balance(List.of(branch(AirDirection.IN, 1, PANEL), branch(AirDirection.OUT, 3, PANEL)), seams);
        CaseFlow out = balance(List.of(branch(AirDirection.OUT, 1, PANEL), branch(AirDirection.IN, 3, PANEL)), seams);

        assertThat(out.insidePa()).isCloseTo(-in.insidePa(), within(1e-9));
        assertThat(out.wholeM3PerS(0)).isCloseTo(in.wholeM3PerS(0), within(1e-10));
        assertThat(out.openingM3PerS(0)).isCloseTo(-in.openingM3PerS(0), within(1e-10));
    }

    /** One mount that blows into a case with one opening is the same as both in series. */
    @Test
    void anOpeningIsInSeriesWithTheOnlyFans() {
        AirResistance opening = new AirResistance(5, 9000);
        CaseFlow flow = balance(List.of(branch(AirDirection.IN, 2, PANEL)), opening);
        double series = branch(AirDirection.IN, 2, PANEL.then(opening)).coreFlowM3PerS(0, 0);

        assertThat(flow.inM3PerS()).isCloseTo(series, within(1e-10));
        assertThat(flow.insidePa()).isCloseTo(opening.lossPa(series), within(1e-7));
    }

    /** Two openings side by side carry what each carries at the same pressure. */
    @Test
    void openingsShareThePressure() {
        AirResistance one = new AirResistance(0, 4e4);
        CaseFlow both = balance(List.of(branch(AirDirection.OUT, 1, PANEL)), one, one);
        CaseFlow joined = balance(List.of(branch(AirDirection.OUT, 1, PANEL)), one.beside(one));

        assertThat(both.openingM3PerS(0)).isEqualTo(both.openingM3PerS(1)).isNegative();
        assertThat(both.outM3PerS()).isCloseTo(joined.outM3PerS(), within(1e-10));
    }

    @Test
    void aSealedCaseHasNoFlow() {
        CaseFlow out = balance(List.of(branch(AirDirection.OUT, 2, PANEL)));
        assertThat(out.outM3PerS()).isCloseTo(0, within(1e-12));
        assertThat(out.insidePa())
                .isCloseTo(-branch(AirDirection.OUT, 2, PANEL).fans().shutOffPa(), within(1e-9));
        CaseFlow in = balance(List.of(branch(AirDirection.IN, 2, PANEL)), AirResistance.CLOSED);
        assertThat(in.inM3PerS()).isCloseTo(0, within(1e-12));
        assertThat(balance(List.of(), PANEL).inM3PerS()).isZero();
    }

    /** Weak fans beside strong ones that blow the same way into a tight case stall; they carry nothing back. */
    @Test
    void weakFansAreStalledByStrongOnes() {
        FanBank strong = new FanBank(MachineParts.pressureFan(2000), 3, 2, Duty.FULL, 1.2);
        AirBranch thick = new AirBranch(
                "thick", AirDirection.IN, strong, new AirBranch.Way(AirResistance.NONE, Optional.empty()));
        CaseFlow flow = balance(List.of(thick, branch(AirDirection.IN, 1, PANEL)), new AirResistance(0, 1e6));

        assertThat(flow.insidePa())
                .isGreaterThan(branch(AirDirection.IN, 1, PANEL).fans().shutOffPa());
        assertThat(flow.wholeM3PerS(1)).isZero();
        assertThat(flow.inM3PerS()).isCloseTo(flow.outM3PerS(), within(1e-11));
    }

    /** Property: the air balances, and all fans twice as fast move twice as much where every loss is quadratic. */
    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23})
    void balancesAndScalesWithSpeed(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 200; round++) {
            List<AirBranch> slow = new ArrayList<>();
            List<AirBranch> fast = new ArrayList<>();
            for (int i = 1 + random.nextInt(4); i > 0; i--) {
                double rpm = 700 + 1300 * random.nextDouble();
                AirResistance path = new AirResistance(0, 500 + 30_000 * random.nextDouble());
                AirDirection way = random.nextBoolean() ? AirDirection.IN : AirDirection.OUT;
                int row = 1 + random.nextInt(3);
                slow.add(quadratic(rpm, row, way, path, 40));
                fast.add(quadratic(rpm, row, way, path, 80));
            }
            AirResistance seams = new AirResistance(0, StrictMath.pow(10, 3 + 4 * random.nextDouble()));
            CaseFlow half = balance(slow, seams);
            CaseFlow full = balance(fast, seams);
            String at = "seed %d round %d".formatted(seed, round);
            assertThat(half.inM3PerS()).as(at).isCloseTo(half.outM3PerS(), within(1e-9 * half.inM3PerS()));
            assertThat(full.insidePa()).as(at).isCloseTo(4 * half.insidePa(), within(1e-6));
            assertThat(full.inM3PerS()).as(at).isCloseTo(2 * half.inM3PerS(), Percentage.withPercentage(1e-5));
        }
    }

    private static AirBranch quadratic(double rpm, int row, AirDirection way, AirResistance path, double percent) {
        FanBank fans = new FanBank(MachineParts.pressureFan(rpm), row, 1, new Duty(percent), 1.2);
        return new AirBranch("mount", way, fans, new AirBranch.Way(path, Optional.empty()));
    }
}
