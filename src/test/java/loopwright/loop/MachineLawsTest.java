package loopwright.loop;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Property: every law holds of every machine that finds a steady state. */
class MachineLawsTest {

    private static final int ROUNDS = 250;

    @ParameterizedTest
    @ValueSource(longs = {1000, 2000, 3000, 4000})
    void everyMachineKeepsEveryLaw(long seed) {
        int found = 0;
        for (int round = 0; round < ROUNDS; round++) {
            Machine machine = new MachineDice(seed + round).machine();
            SteadyState state = MachineDice.solve(machine);
            if (state instanceof Steady steady) {
                found++;
                for (Law law : Law.values()) {
                    assertThat(law.keeps(machine, steady))
                            .as("%s, seed %d: off by %s", law, seed + round, law.off(machine, steady))
                            .isTrue();
                }
            }
        }
        assertThat(found).isGreaterThan(ROUNDS * 9 / 10);
    }

    /** What finds no steady state has no air through the case or through any radiator, and says so. */
    @Test
    void onlyMachinesWithoutAirFindNone() {
        int none = 0;
        for (long seed = 0; seed < 1000; seed++) {
            if (MachineDice.solve(new MachineDice(seed).machine()) instanceof SteadyState.None why) {
                none++;
                assertThat(why.why()).as("seed %d", seed).contains("air");
                assertThat(why.found()).isEmpty();
            }
        }
        assertThat(none).isPositive();
    }
}
