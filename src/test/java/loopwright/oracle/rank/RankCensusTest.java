package loopwright.oracle.rank;

import static org.assertj.core.api.Assertions.assertThat;

import loopwright.oracle.OracleCase;
import loopwright.oracle.cases.RankCases;
import org.junit.jupiter.api.Test;

/** The generated cases are hard enough to mean something. */
class RankCensusTest {

    /** The first half of the seeds that the agreement is asked on. */
    private static final int SEEDS = 60;

    @Test
    void limitsBiteAndBuildsTie() {
        int bite = 0;
        int tie = 0;
        int several = 0;
        int none = 0;
        long builds = 0;
        int metals = 0;
        int supplySound = 0;
        int fittings = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            OracleCase question = RankCases.generate(seed);
            RankAnswer answer = new BruteRank(RankFault.NONE).apply(question);
            metals += isOther(question, RankFault.METALS_IGNORED, answer);
            supplySound += isOther(question, RankFault.SUPPLIES_ARE_SILENT, answer);
            fittings += isOther(question, RankFault.NO_FITTINGS, answer);
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
                "%d builds; limits bite %d, nothing feasible %d, several unbeaten %d, ties %d, metals decide %d, the supply's"
                        + " fan %d, fittings %d of %d cases",
                builds,
                bite,
                none,
                several,
                tie,
                metals,
                supplySound,
                fittings,
                SEEDS);
        assertThat(bite * 3).as(seen).isGreaterThanOrEqualTo(SEEDS);
        assertThat(several).as(seen).isGreaterThan(SEEDS / 3);
        assertThat(metals).as(seen).isGreaterThanOrEqualTo(2);
        assertThat(supplySound * 10).as(seen).isGreaterThanOrEqualTo(SEEDS);
        assertThat(fittings * 5).as(seen).isGreaterThanOrEqualTo(SEEDS);
        assertThat(tie).as(seen).isGreaterThan(SEEDS / 10);
    }

    private static int isOther(OracleCase question, RankFault fault, RankAnswer truth) {
        RankAnswer other = new BruteRank(fault).apply(question);
        return other.unbeaten().equals(truth.unbeaten()) && other.best().equals(truth.best()) ? 0 : 1;
    }
}
