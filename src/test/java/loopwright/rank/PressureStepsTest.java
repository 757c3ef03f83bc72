package loopwright.rank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PressureStepsTest {

    @ParameterizedTest
    @ValueSource(ints = {5, 50, 100})
    void rise(int dutyPercent) {
        for (int step = 1; step < PressureSteps.count(); step++) {
            assertThat(PressureSteps.pascal(step, dutyPercent))
                    .isGreaterThan(PressureSteps.pascal(step - 1, dutyPercent));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {5, 50, 100})
    void mirrorAtTheRoomsPressure(int dutyPercent) {
        assertThat(PressureSteps.pascal(PressureSteps.middle(), dutyPercent)).isZero();
        for (int step = 0; step < PressureSteps.count(); step++) {
            int mirrored = PressureSteps.mirrored(step);
            assertThat(PressureSteps.mirrored(mirrored)).isEqualTo(step);
            assertThat(PressureSteps.pascal(mirrored, dutyPercent))
                    .isEqualTo(0.0 - PressureSteps.pascal(step, dutyPercent));
        }
    }

    /** Fan laws: pressure goes with the square of the speed. */
    @ParameterizedTest
    @ValueSource(ints = {5, 50, 80})
    void goWithTheSquareOfTheDuty(int dutyPercent) {
        double share = dutyPercent / 100.0;
        for (int step = 0; step < PressureSteps.count(); step++) {
            double full = PressureSteps.pascal(step, 100);
            assertThat(PressureSteps.pascal(step, dutyPercent))
                    .isCloseTo(full * share * share, within(1e-12 * (1 + Math.abs(full))));
        }
    }
}
