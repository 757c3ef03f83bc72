package loopwright.workshop.template;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import loopwright.workshop.drawing.Area;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The cuts of a nest, done one after the other on paper. */
class NestCutsTest {

    /** By hand: one piece of 300 x 200 in the corner of a sheet of 500 x 250: off the sheet, then off the shelf. */
    @Test
    void cutsOnePieceOffACorner() {
        Nest nest = Nest.of(50_000, 25_000, 300, List.of(new Nest.Piece("a", 30_000, 20_000)));
        assertThat(NestCuts.of(nest))
                .containsExactly(
                        new NestCuts.Cut(1, true, 20_000, 0, 50_000), new NestCuts.Cut(1, false, 30_000, 0, 20_000));
        assertThat(nest.wasteSquareMm()).isEqualTo(500 * 250 - 300 * 200);
        assertThat(nest.wastePercent()).isEqualTo(52);
    }

    @Test
    void cutsNothingWhereThePieceIsTheSheet() {
        Nest nest = Nest.of(50_000, 25_000, 300, List.of(new Nest.Piece("a", 50_000, 25_000)));
        assertThat(NestCuts.of(nest)).isEmpty();
        assertThat(nest.wasteSquareMm()).isZero();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void leaveEachPieceByItself(long seed) {
        Random random = new Random(seed);
        int saw = random.nextInt(5) * 100;
        List<Nest.Piece> pieces = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            pieces.add(new Nest.Piece("p" + i, 500 + random.nextInt(30_000), 500 + random.nextInt(20_000)));
        }
        Nest nest = Nest.of(40_000, 25_000, saw, pieces);
        for (int sheet = 1; sheet <= nest.sheets(); sheet++) {
            int number = sheet;
            List<Area> inHand = new ArrayList<>(List.of(new Area(0, 0, 40_000, 25_000)));
            for (NestCuts.Cut cut : NestCuts.of(nest)) {
                if (cut.sheet() == sheet) {
                    saw(inHand, cut, saw, "seed " + seed + ", " + cut);
                }
            }
            assertThat(inHand)
                    .as("seed %d, sheet %d", seed, sheet)
                    .containsAll(nest.laid().stream()
                            .filter(l -> l.sheet() == number)
                            .map(NestCutsTest::area)
                            .toList());
        }
    }

    private static Area area(Nest.Laid laid) {
        return new Area(
                laid.xHmm(),
                laid.yHmm(),
                laid.xHmm() + laid.piece().lengthHmm(),
                laid.yHmm() + laid.piece().widthHmm());
    }

    /** A saw goes right across exactly one piece in hand. */
    private static void saw(List<Area> inHand, NestCuts.Cut cut, int saw, String which) {
        List<Area> across = inHand.stream()
                .filter(a -> cut.level()
                        ? a.leftHmm() <= cut.fromHmm()
                                && a.rightHmm() >= cut.toHmm()
                                && a.bottomHmm() < cut.atHmm()
                                && a.topHmm() > cut.atHmm()
                        : a.bottomHmm() <= cut.fromHmm()
                                && a.topHmm() >= cut.toHmm()
                                && a.leftHmm() < cut.atHmm()
                                && a.rightHmm() > cut.atHmm())
                .toList();
        assertThat(across).as(which).hasSize(1);
        Area one = across.get(0);
        inHand.remove(one);
        if (cut.level()) {
            assertThat(one.widthHmm()).as(which).isEqualTo(cut.toHmm() - cut.fromHmm());
            inHand.add(new Area(one.leftHmm(), one.bottomHmm(), one.rightHmm(), cut.atHmm()));
            if (cut.atHmm() + saw < one.topHmm()) {
                inHand.add(new Area(one.leftHmm(), cut.atHmm() + saw, one.rightHmm(), one.topHmm()));
            }
        } else {
            assertThat(one.heightHmm()).as(which).isEqualTo(cut.toHmm() - cut.fromHmm());
            inHand.add(new Area(one.leftHmm(), one.bottomHmm(), cut.atHmm(), one.topHmm()));
            if (cut.atHmm() + saw < one.rightHmm()) {
                inHand.add(new Area(cut.atHmm() + saw, one.bottomHmm(), one.rightHmm(), one.topHmm()));
            }
        }
    }
}
