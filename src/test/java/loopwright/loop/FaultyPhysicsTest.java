package loopwright.loop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Physics that is wrong by construction breaks a law: were it not so, the laws would say nothing. */
class FaultyPhysicsTest {

    private static final int MACHINES = 40;

    @ParameterizedTest
    @EnumSource
    void everyFaultBreaksALaw(Fault fault) {
        Set<Law> broken = EnumSet.noneOf(Law.class);
        for (long seed = 7000; seed < 7000 + MACHINES; seed++) {
            Machine asked = new MachineDice(seed).machine();
            if (MachineDice.solve(asked) instanceof Steady right && fault.solve(asked) instanceof Steady wrong) {
                for (Law law : Law.values()) {
                    assertThat(law.keeps(asked, right))
                            .as("%s, seed %d", law, seed)
                            .isTrue();
                    if (!law.keeps(asked, wrong)) {
                        broken.add(law);
                    }
                }
            }
        }
        assertThat(broken).as("laws that %s breaks", fault).isNotEmpty();
    }

    /** Each law is broken by some fault: none of them is idle. */
    @ParameterizedTest
    @EnumSource
    void everyLawIsBrokenByAFault(Law law) {
        boolean broken = false;
        for (long seed = 7000; seed < 7000 + MACHINES && !broken; seed++) {
            Machine asked = new MachineDice(seed).machine();
            for (Fault fault : Fault.values()) {
                broken |= fault.solve(asked) instanceof Steady wrong && !law.keeps(asked, wrong);
            }
        }
        assertThat(broken).isTrue();
    }
}
