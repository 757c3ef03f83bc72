package loopwright.workshop.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import loopwright.workshop.drawing.Tiling.Reach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TilingTest {

    @Test
    void takesOneTileForWhatFits() {
        assertThat(Tiling.of(new Reach(-10, 90), List.of(), 100, 15).startsHmm())
                .containsExactly(-10);
        assertThat(Tiling.of(new Reach(-10, 91), List.of(), 100, 15).startsHmm())
                .containsExactly(-10, 75);
    }

    @Test
    void startsEarlierForAHoleThatTheJointWouldCut() {
        Reach hole = new Reach(60, 120);
        assertThat(Tiling.of(new Reach(0, 170), List.of(hole), 100, 15).startsHmm())
                .containsExactly(0, 60, 145);
    }

    @Test
    void refusesAnOverlapAsLongAsATile() {
        assertThatThrownBy(() -> Tiling.of(new Reach(0, 10), List.of(), 15, 15))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("longer than its overlap");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void coversOverlapsAndKeepsHolesWholeWithAsFewTilesAsCanBe(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 200; i++) {
            int length = 8 + random.nextInt(10);
            int overlap = random.nextInt(4);
            Reach all = new Reach(0, 5 + random.nextInt(40));
            List<Reach> holes = new ArrayList<>();
            for (int h = random.nextInt(5); h > 0; h--) {
                int from = random.nextInt(all.toHmm());
                holes.add(new Reach(from, Math.min(all.toHmm(), from + 1 + random.nextInt(length))));
            }
            Tiling tiling = Tiling.of(all, holes, length, overlap);
            String which = "seed " + seed + ", case " + i + ": " + all + " " + holes + " " + tiling + " " + overlap;
            assertThat(isRight(all, holes, tiling.startsHmm(), length, overlap))
                    .as(which)
                    .isTrue();
            assertThat(tiling.count()).as(which).isEqualTo(fewest(all, holes, length, overlap));
        }
    }

    private static boolean isRight(Reach all, List<Reach> holes, List<Integer> starts, int length, int overlap) {
        boolean right = starts.get(0) == all.fromHmm() && starts.get(starts.size() - 1) + length >= all.toHmm();
        for (int i = 1; i < starts.size(); i++) {
            right &= starts.get(i) <= starts.get(i - 1) + length - overlap;
        }
        for (Reach hole : holes) {
            right &= starts.stream().anyMatch(s -> s <= hole.fromHmm() && hole.toHmm() <= s + length);
        }
        return right;
    }

    /** By trying every way to go on. */
    private static int fewest(Reach all, List<Reach> holes, int length, int overlap) {
        for (int count = 1; ; count++) {
            if (goes(all, holes, new ArrayList<>(List.of(all.fromHmm())), new int[] {length, overlap, count})) {
                return count;
            }
        }
    }

    private static boolean goes(Reach all, List<Reach> holes, List<Integer> starts, int[] rule) {
        if (starts.size() == rule[2]) {
            return isRight(all, holes, starts, rule[0], rule[1]);
        }
        int last = starts.get(starts.size() - 1);
        for (int next = last + rule[0] - rule[1]; next > last; next--) {
            boolean lost = false;
            for (Reach hole : holes) {
                lost |= hole.fromHmm() < next && hole.fromHmm() >= last && hole.toHmm() > last + rule[0];
            }
            starts.add(next);
            boolean found = !lost && goes(all, holes, starts, rule);
            starts.remove(starts.size() - 1);
            if (found) {
                return true;
            }
        }
        return false;
    }
}
