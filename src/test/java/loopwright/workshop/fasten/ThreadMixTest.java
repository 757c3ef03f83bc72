package loopwright.workshop.fasten;

import static loopwright.workshop.fasten.SampleStacks.row;
import static org.assertj.core.api.Assertions.assertThat;

import loopwright.catalog.part.ScrewThread;
import org.junit.jupiter.api.Test;

/** Screws in threads that are not theirs; what happens is common practice, the sizes are the standards'. */
class ThreadMixTest {

    private static ThreadMix mix(ScrewThread screw, ScrewThread hole) {
        return ThreadMix.of(row(screw), row(hole));
    }

    @Test
    void m3WobblesInA632Hole() {
        assertThat(mix(ScrewThread.M3, ScrewThread.UNC_6_32)).isEqualTo(ThreadMix.WOBBLES);
        assertThat(mix(ScrewThread.UNC_6_32, ScrewThread.M3)).isEqualTo(ThreadMix.DOES_NOT_ENTER);
    }

    @Test
    void m35BindsInA632Hole() {
        assertThat(mix(ScrewThread.M3_5, ScrewThread.UNC_6_32)).isEqualTo(ThreadMix.BINDS);
    }

    @Test
    void onlyTheSameThreadFits() {
        for (ScrewThread screw : ScrewThread.values()) {
            for (ScrewThread hole : ScrewThread.values()) {
                assertThat(mix(screw, hole) == ThreadMix.SAME).isEqualTo(screw == hole);
            }
        }
        assertThat(mix(ScrewThread.M3, ScrewThread.M4)).isEqualTo(ThreadMix.FALLS_THROUGH);
    }

    /** ISO 273 medium for M3 is 3.4: an M4 must not pass; nor does a screw pass a hole of its own size. */
    @Test
    void m4DoesNotPassTheHoleOfAnM3() {
        assertThat(ThreadMix.passes(row(ScrewThread.M4), 340)).isFalse();
        assertThat(ThreadMix.passes(row(ScrewThread.M3), 340)).isTrue();
        assertThat(ThreadMix.passes(row(ScrewThread.M4), 400)).isFalse();
        assertThat(ThreadMix.passes(row(ScrewThread.M4), 401)).isTrue();
    }
}
