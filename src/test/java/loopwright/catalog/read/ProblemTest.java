package loopwright.catalog.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ProblemTest {

    private static Problem at(String file, int line, int column) {
        return new Problem(file, line, column, "", "", "a", "b", "");
    }

    @Test
    void readsAsOneLine() {
        Problem problem = new Problem(
                "catalogs/pumps.yaml",
                41,
                17,
                "pump \"p-12\"",
                "max_flow_L_per_min",
                "-3",
                "above 0",
                "Maybe the sheet gives m3/h?");
        assertThat(problem.text())
                .isEqualTo("catalogs/pumps.yaml:41:17: pump \"p-12\": max_flow_L_per_min: found -3, allowed above 0."
                        + " Maybe the sheet gives m3/h?");
    }

    @Test
    void sortsByFileLineAndColumn() {
        Problems problems = new Problems();
        problems.add(at("b", 1, 1));
        problems.add(at("a", 10, 1));
        problems.add(at("a", 9, 20));
        problems.add(at("a", 9, 3));
        assertThat(problems.sorted()).containsExactly(at("a", 9, 3), at("a", 9, 20), at("a", 10, 1), at("b", 1, 1));
    }

    @Test
    void showsFiveHundredAndCountsTheRest() {
        List<Problem> many =
                IntStream.rangeClosed(1, 503).mapToObj(i -> at("a", i, 1)).toList();
        ProblemsException e = new ProblemsException(many);
        assertThat(e.problems()).hasSize(500);
        assertThat(e.more()).isEqualTo(3);
        assertThat(e.lines()).hasSize(501).last().isEqualTo("and 3 more");
        assertThat(new ProblemsException(many.subList(0, 500)).lines()).hasSize(500);
    }

    @Test
    void cutsALongQuotation() {
        Problem problem = new Problem("a", 1, 1, "", "", "x".repeat(5000), "b", "");
        assertThat(problem.text().length()).isLessThan(200);
    }
}
