package loopwright.oracle.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.basis.Span;
import loopwright.catalog.chassis.Mount;

/** A mount while a case is drawn: where its reference stack hangs, and its slots round there. */
final class CaseMount {
    final String id;
    final Face face;
    final Axis lengthwise;
    final int insetHmm;
    final int gasketHmm;
    int centreUHmm;
    int centreVHmm;
    boolean longSideways;
    boolean airless;
    int outsideHmm = 2000;

    CaseMount(Dice dice, Face face, Axis lengthwise) {
        this.id = face.name().toLowerCase(java.util.Locale.ROOT);
        this.face = face;
        this.lengthwise = lengthwise;
        this.insetHmm = dice.chance(30) ? dice.small(1, 5) : 0;
        this.gasketHmm = dice.chance(25) ? dice.small(1, 5) : 0;
    }

    /** Depth of the reference stack, fans outside and radiator inside, from the wall. */
    int depthHmm(int fanHmm, int radiatorHmm) {
        return insetHmm + gasketHmm + fanHmm + radiatorHmm;
    }

    /** A seat with slots round the centre, some moved by {@code shiftHmm}. */
    Mount.Seat seat(Dice dice, Pattern pattern, int shiftHmm, String tag) {
        List<Span> along = slots(dice, centreUHmm + shiftHmm, !longSideways, tag);
        List<Span> across = slots(dice, centreVHmm, longSideways, "");
        return new Mount.Seat(pattern, along, across);
    }

    private static List<Span> slots(Dice dice, int centre, boolean isLong, String tag) {
        List<Span> out = new ArrayList<>();
        int low = centre - (isLong ? dice.small(2, 7) : 0);
        int high = centre + (isLong ? dice.small(2, 9) : dice.small(0, 1));
        out.add(new Span(dice.dim(low, tag), Dice.hmm(high)));
        if (isLong && dice.chance(40)) {
            int from = high + dice.small(2, 4);
            out.add(new Span(Dice.hmm(from), Dice.hmm(from + dice.small(0, 3))));
        }
        if (isLong && dice.chance(20)) {
            int from = low - dice.small(3, 9);
            out.add(new Span(Dice.hmm(from), Dice.hmm(from + dice.small(0, 1))));
        }
        return out;
    }

    Mount mount(Dice dice, List<Mount.Seat> seats) {
        return new Mount(
                id,
                "panel-" + id,
                lengthwise,
                dice.dim(insetHmm, "inset"),
                seats,
                new Mount.Opening(
                        airless ? 0.3 : 0.8,
                        Mount.Where.FACE,
                        Optional.empty(),
                        dice.dim(outsideHmm, "outside"),
                        Optional.empty()),
                gasketHmm > 0
                        ? Optional.of(new Mount.Gasket(Dice.hmm(2 * gasketHmm), dice.dim(gasketHmm, "gasket")))
                        : Optional.empty(),
                dice.chance(10) ? List.of("plate-0") : List.of());
    }
}
