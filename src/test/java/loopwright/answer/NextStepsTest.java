package loopwright.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import loopwright.answer.NextSteps.Enough;
import loopwright.answer.NextSteps.Step;
import loopwright.catalog.chassis.Mount.Where;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.Steady;
import loopwright.loop.air.AirPath;
import loopwright.rank.Build;
import loopwright.rank.Neighbours;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NextStepsTest {

    private static final Inspection CHEAP = SlimDesk.cheapest();
    private static final NextSteps STEPS = new NextSteps(CHEAP);

    @Test
    void everyNeighbourIsAStep() {
        assertThat(STEPS.all().stream().map(s -> s.kind() + " " + s.what()))
                .containsExactlyElementsOf(new Neighbours(CHEAP.fitCase(), CHEAP.model())
                        .of(CHEAP.build()).stream()
                                .map(n -> n.kind() + " " + n.what())
                                .toList());
    }

    @Test
    void stepsTellTheDifferenceToTheBuild() {
        Build.Outcome now = CHEAP.build().outcome();
        for (Step step : STEPS.all()) {
            Build.Outcome then = step.build().outcome();
            assertThat(now.coolantOverRoomCentiK() - 100 * step.gainK())
                    .as(step.what())
                    .isCloseTo(then.coolantOverRoomCentiK(), within(1e-6));
            assertThat(now.priceCents() + step.costCents()).as(step.what()).isEqualTo(then.priceCents());
            assertThat(now.labourMin() + step.labourMin()).as(step.what()).isEqualTo(then.labourMin());
            assertThat(now.sound().levelDBA().orElseThrow() + step.noiseDB())
                    .as(step.what())
                    .isCloseTo(then.sound().levelDBA().orElseThrow(), within(1e-9));
        }
        assertThat(STEPS.all())
                .isSortedAccordingTo(Comparator.comparingDouble(Step::gainK).reversed());
    }

    /** Two temperatures, each rounded to a hundredth, lie up to a hundredth from the middle of the band. */
    @Test
    void theBandIsAroundTheGain() {
        for (Step step : STEPS.all()) {
            double middleK = (step.gainBand().lowK() + step.gainBand().highK()) / 2;
            assertThat(middleK).as(step.what()).isCloseTo(step.gainK(), within(0.0101));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-100, 0, 0.25, 0.5, 1, 1.5, 2, 3, 5, 8, 100})
    void nothingThatGainsSoMuchIsCheaper(double kelvin) {
        List<Step> enough = new ArrayList<>();
        for (Step step : STEPS.all()) {
            if (step.gainK() >= kelvin) {
                enough.add(step);
            }
        }
        Optional<Step> told = STEPS.cheapestGain(kelvin);
        assertThat(told.isPresent()).isEqualTo(!enough.isEmpty());
        told.ifPresent(t -> {
            assertThat(t.gainK()).isGreaterThanOrEqualTo(kelvin);
            assertThat(enough)
                    .allMatch(s -> s.costCents() > t.costCents()
                            || (s.costCents() == t.costCents() && s.gainK() <= t.gainK()));
        });
    }

    @Test
    void someStepGainsAndOneAsksTooMuch() {
        assertThat(STEPS.cheapestGain(0.5)).isPresent();
        assertThat(STEPS.cheapestGain(100)).isEmpty();
    }

    /** Coolant over room with a mount's panel open so far, cut away where it sits; conductance is one over it. */
    private static double overRoomK(Inspection inspection, String mount, double share) {
        List<Machine.FanMount> mounts = new ArrayList<>();
        for (Machine.FanMount each : inspection.machine().mounts()) {
            AirPath old = each.air().path();
            AirPath opened = new AirPath(share, Where.FACE, old.filterShare(), old.cover(), old.outsideDepthM());
            mounts.add(
                    each.mount().equals(mount)
                            ? new Machine.FanMount(
                                    each.mount(),
                                    each.direction(),
                                    each.fans(),
                                    new Machine.MountAir(opened, each.air().face()),
                                    each.radiator())
                            : each);
        }
        Machine old = inspection.machine();
        return new MachineModel(inspection.fitCase().catalog().practice(), old.site())
                .solve(new Machine(old.site(), mounts, old.openings(), old.water(), old.caseHeatW()))
                .found()
                .map(Steady::coolantOverRoomK)
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static double loss(Inspection inspection, String mount, double share) {
        return 1 - overRoomK(inspection, mount, 1) / overRoomK(inspection, mount, share);
    }

    @Test
    void aHundredthLessOpenLosesTooMuch() {
        int told = 0;
        for (Inspection inspection : List.of(CHEAP, SlimDesk.coolest())) {
            for (Enough enough : new NextSteps(inspection).openEnough()) {
                double share = enough.enough().orElseThrow();
                assertThat(loss(inspection, enough.mount(), share))
                        .as(enough.toString())
                        .isLessThanOrEqualTo(0.05);
                if (share > 0.011) {
                    assertThat(loss(inspection, enough.mount(), share - 0.01))
                            .as(enough.toString())
                            .isGreaterThan(0.05);
                }
                for (double more = share; more < 1; more += 0.07) {
                    assertThat(loss(inspection, enough.mount(), more)).isLessThanOrEqualTo(0.05);
                }
                told++;
            }
        }
        assertThat(told).isPositive();
    }
}
