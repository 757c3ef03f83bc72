package loopwright.oracle.rank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.PrimitiveIterator;
import java.util.Set;
import loopwright.oracle.OracleCase;
import loopwright.oracle.cases.RankCases;
import org.junit.jupiter.api.Test;

/** Each planted mistake changes the unbeaten points or a list on one of the seeds: the cases would catch it. */
class FaultyRankTest {

    @Test
    void everyMistakeIsCaught() {
        Set<RankFault> uncaught = EnumSet.complementOf(EnumSet.of(RankFault.NONE));
        PrimitiveIterator.OfLong seeds = RankAgreementTest.seeds().iterator();
        while (seeds.hasNext() && !uncaught.isEmpty()) {
            OracleCase question = RankCases.generate(seeds.nextLong());
            RankAnswer truth = new BruteRank(RankFault.NONE).apply(question);
            uncaught.removeIf(fault -> !isSame(truth, new BruteRank(fault).apply(question)));
        }
        assertThat(uncaught)
                .as("mistakes that no seed up to %s catches", RankAgreementTest.SEEDS - 1)
                .isEmpty();
    }

    private static boolean isSame(RankAnswer truth, RankAnswer other) {
        return truth.unbeaten().equals(other.unbeaten()) && truth.best().equals(other.best());
    }
}
