package loopwright.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import loopwright.answer.Comparison.Row;
import loopwright.rank.Neighbours.Kind;
import org.junit.jupiter.api.Test;

class ComparisonTest {

    private static final Inspection COOLEST = SlimDesk.coolest();
    private static final Inspection CHEAPEST = SlimDesk.cheapest();

    private static Row row(Map<String, Row> rows, String figure) {
        assertThat(rows).containsKey(figure);
        return java.util.Objects.requireNonNull(rows.get(figure));
    }

    private static Map<String, Row> rows(Inspection first, Inspection second) {
        Map<String, Row> out = new TreeMap<>();
        new Comparison(first, second).rows().forEach(r -> out.put(r.figure(), r));
        return out;
    }

    @Test
    void turningRoundTurnsEverySign() {
        Map<String, Row> there = rows(COOLEST, CHEAPEST);
        Map<String, Row> back = rows(CHEAPEST, COOLEST);
        assertThat(there.keySet()).isEqualTo(back.keySet()).contains("processor, C", "coolant, C", "price, EUR");
        there.forEach((figure, row) -> {
            Row other = row(back, figure);
            assertThat(row.first()).as(figure).isEqualTo(other.second());
            assertThat(row.difference()).as(figure).isEqualTo(0.0 - other.difference());
            assertThat(row.plusMinus().orElse(-1))
                    .as(figure)
                    .isCloseTo(other.plusMinus().orElse(-1), within(1e-9));
        });
        assertThat(row(there, "price, EUR").difference()).isNegative();
        assertThat(row(there, "coolant, C").difference()).isPositive();
        List<List<String>> only = new Comparison(COOLEST, CHEAPEST).onlyOne();
        assertThat(new Comparison(CHEAPEST, COOLEST).onlyOne()).containsExactly(only.get(1), only.get(0));
    }

    /** What both share is counted once: similar builds are told apart better than either is known. */
    @Test
    void similarBuildsAreToldApartBetterThanEitherIsKnown() {
        List<Inspection> alike = SlimDesk.beside(CHEAPEST, Kind.DUTY);
        assertThat(alike).isNotEmpty();
        for (Inspection other : alike) {
            Map<String, Row> rows = rows(CHEAPEST, other);
            double coolantK = row(rows, "coolant, C").plusMinus().orElseThrow();
            double caseK = row(rows, "air inside, C").plusMinus().orElseThrow();
            assertThat(coolantK)
                    .isPositive()
                    .isLessThan(together(
                            CHEAPEST.coolantBand().halfK(), other.coolantBand().halfK()));
            assertThat(caseK)
                    .isPositive()
                    .isLessThan(together(
                            CHEAPEST.caseBand().halfK(), other.caseBand().halfK()));
        }
    }

    private static double together(double oneK, double otherK) {
        return Math.sqrt(oneK * oneK + otherK * otherK);
    }

    /** Two different blocks are off by a tenth each in their own way, which the difference has to say. */
    @Test
    void differentBlocksAreOffEachInItsOwnWay() {
        List<Inspection> others = SlimDesk.beside(CHEAPEST, Kind.BLOCK);
        assertThat(others).isNotEmpty();
        for (Inspection other : others) {
            Row row = row(rows(CHEAPEST, other), "processor, C");
            double ownK = together(0.1 * stepK(CHEAPEST), 0.1 * stepK(other));
            assertThat(row.plusMinus().orElseThrow()).isGreaterThanOrEqualTo(ownK - 1e-9);
        }
    }

    private static double stepK(Inspection inspection) {
        return inspection.junctions().stream()
                .filter(h -> h.name().equals("processor block"))
                .findFirst()
                .orElseThrow()
                .stepK();
    }

    @Test
    void namesWhatOnlyOneHas() {
        for (Inspection other : SlimDesk.beside(CHEAPEST, Kind.DUTY)) {
            assertThat(new Comparison(CHEAPEST, other).onlyOne())
                    .containsExactly(
                            List.of("fans at " + CHEAPEST.build().dutyPercent() + " %"),
                            List.of("fans at " + other.build().dutyPercent() + " %"));
        }
    }

    @Test
    void aBuildEqualsItself() {
        for (Row row : new Comparison(CHEAPEST, CHEAPEST).rows()) {
            assertThat(row.difference()).as(row.figure()).isZero();
            assertThat(row.plusMinus().orElse(0)).as(row.figure()).isZero();
        }
    }
}
