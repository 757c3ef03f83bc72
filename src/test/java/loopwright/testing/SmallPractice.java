package loopwright.testing;

import loopwright.catalog.part.Radiator;
import loopwright.catalog.standard.Practice;
import loopwright.quantity.Dimension;

/** Parts of a practice file that small cases share; invented, and neutral where something can be neutral. */
public final class SmallPractice {

    private SmallPractice() {}

    /** 20 cm² of leaks, holes of 4 and 1 mm, stacks sealed all round. */
    public static Practice.Air air(Dimension outsideDepthMin, double solidSkinFreeAreaMin) {
        return new Practice.Air(outsideDepthMin, solidSkinFreeAreaMin, 20, 4, 1, 0);
    }

    /** Blocks take all of a part's heat, supplies keep theirs. */
    public static Practice.Heat heat(double miscHeatW) {
        return new Practice.Heat(miscHeatW, 1, 0, 90, new Practice.BlockStep(4, 0.25, 0.5));
    }

    /** Two elbows at each part, smooth tube, pumps at 60 %. */
    public static Practice.Loop loop() {
        return new Practice.Loop(2, 0.0015, 60);
    }

    /** Usual fins and tubes, invented. */
    public static Practice.Core core() {
        return new Practice.Core(new Radiator.Fins(1.4, 20, 5.6, 8, 0.055, 110), new Radiator.Tubes(2.5, 0.2, 2));
    }
}
