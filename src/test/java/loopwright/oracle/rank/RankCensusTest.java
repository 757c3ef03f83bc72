package loopwright.oracle.rank;

import static org.assertj.core.api.Assertions.assertThat;

import loopwright.oracle.cases.RankCases;
import org.junit.jupiter.api.Test;

/** The generated cases are hard enough to mean something. */
class RankCensusTest {

    /** The first half of the seeds that the agreement is asked on. */
    private static final int SEEDS = 120;

    @Test
    void limitsBiteAndBuildsTie() {
        int bite = 0;
        int tie = 0;
        int several = 0;
        int none = 0;
        long builds = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            RankAnswer answer = new BruteRank(RankFault.NONE).apply(RankCases.generate(seed));
            builds += answer.counts().builds();
            bite += answer.counts().feasible() > 0
                            && answer.counts().feasible() < answer.counts().builds()
                    ? 1
                    : 0;
            none += answer.counts().feasible() == 0 ? 1 : 0;
            several += answer.unbeaten().size() > 1 ? 1 : 0;
            tie += answer.unbeaten().values().stream().anyMatch(n -> n > 1) ? 1 : 0;
        }
        String seen = String.format(
                java.util.Locale.ROOT,
                "%d builds; limits bite %d, nothing feasible %d, several unbeaten %d, ties %d of %d cases",
                builds,
                bite,
                none,
                several,
                tie,
                SEEDS);
        assertThat(bite * 3).as(seen).isGreaterThanOrEqualTo(SEEDS);
        assertThat(several).as(seen).isGreaterThan(SEEDS / 3);
        assertThat(tie).as(seen).isGreaterThan(SEEDS / 10);
    }
}
