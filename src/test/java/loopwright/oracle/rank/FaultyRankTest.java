package loopwright.oracle.rank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.PrimitiveIterator;
import loopwright.oracle.OracleCase;
import loopwright.oracle.cases.RankCases;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Each planted mistake changes the unbeaten points on one of the seeds: the cases would catch it. */
class FaultyRankTest {

    @ParameterizedTest
    @EnumSource(value = RankFault.class, mode = EnumSource.Mode.EXCLUDE, names = "NONE")
    void aMistakeIsCaught(RankFault fault) {
        List<Long> tried = new ArrayList<>();
        boolean caught = false;
        PrimitiveIterator.OfLong seeds = RankAgreementTest.seeds().iterator();
        while (seeds.hasNext() && !caught) {
            OracleCase question = RankCases.generate(seeds.nextLong());
            tried.add(question.seed());
            RankAnswer truth = new BruteRank(RankFault.NONE).apply(question);
            caught = !truth.unbeaten()
                    .equals(new BruteRank(fault).apply(question).unbeaten());
        }
        assertThat(caught).as("%s on seeds %s", fault, tried).isTrue();
    }
}
