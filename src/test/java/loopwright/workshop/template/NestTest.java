package loopwright.workshop.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

class NestTest {

    private static final GeometryFactory PLANE = new GeometryFactory();

    @Test
    void saysWhatIsLeftOver() {
        Nest nest = Nest.of(10_000, 10_000, 0, List.of(new Nest.Piece("a", 10_000, 2500)));
        assertThat(nest.sheets()).isEqualTo(1);
        assertThat(nest.wastePercent()).isCloseTo(75, within(1e-9));
    }

    @Test
    void leavesRoomForTheSaw() {
        List<Nest.Piece> two = List.of(new Nest.Piece("a", 5000, 1000), new Nest.Piece("b", 5000, 1000));
        assertThat(Nest.of(10_299, 1000, 300, two).sheets()).isEqualTo(2);
        assertThat(Nest.of(10_300, 1000, 300, two).sheets()).isEqualTo(1);
    }

    @Test
    void turnsAPieceThatOnlyFitsUpright() {
        Nest nest = Nest.of(2000, 9000, 0, List.of(new Nest.Piece("a", 8000, 1000)));
        assertThat(nest.tooLarge()).isEmpty();
        assertThat(nest.laid().get(0).piece().widthHmm()).isEqualTo(8000);
    }

    @Test
    void namesWhatNoSheetHolds() {
        Nest.Piece piece = new Nest.Piece("a", 8000, 3000);
        assertThat(Nest.of(7000, 7000, 0, List.of(piece)).tooLarge()).containsExactly(piece);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void laysNothingOverAnythingElseOrOverTheEdge(long seed) {
        Random random = new Random(seed);
        int saw = random.nextInt(5) * 100;
        List<Nest.Piece> pieces = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            pieces.add(new Nest.Piece("p" + i, 500 + random.nextInt(30_000), 500 + random.nextInt(20_000)));
        }
        Nest nest = Nest.of(40_000, 25_000, saw, pieces);
        assertThat(nest.laid()).as("seed %d", seed).hasSize(20);
        Geometry sheet = box(0, 0, 40_000, 25_000);
        for (Nest.Laid one : nest.laid()) {
            assertThat(sheet.covers(box(one))).as("seed %d, %s", seed, one).isTrue();
            for (Nest.Laid other : nest.laid()) {
                if (!one.equals(other) && one.sheet() == other.sheet()) {
                    assertThat(box(one).distance(box(other)))
                            .as("seed %d, %s and %s", seed, one, other)
                            .isGreaterThanOrEqualTo(saw - 1e-6);
                    assertThat(box(one).intersection(box(other)).getArea()).isZero();
                }
            }
        }
    }

    private static Geometry box(Nest.Laid laid) {
        return box(
                laid.xHmm(),
                laid.yHmm(),
                laid.xHmm() + laid.piece().lengthHmm(),
                laid.yHmm() + laid.piece().widthHmm());
    }

    private static Geometry box(int left, int bottom, int right, int top) {
        return PLANE.toGeometry(new Envelope(left, right, bottom, top));
    }
}
