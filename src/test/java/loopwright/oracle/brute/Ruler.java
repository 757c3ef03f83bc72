package loopwright.oracle.brute;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Box;
import loopwright.catalog.basis.Face;
import loopwright.catalog.basis.Heading;
import loopwright.catalog.basis.Pose;
import loopwright.quantity.Dimension;

/** Reads the dimensions of one body, remembers whether one was unknown, and collects the body's boxes. */
final class Ruler {
    private final List<BruteBox> boxes = new ArrayList<>();
    private boolean unknown;

    int hmm(Dimension dimension) {
        unknown |= dimension.isUnknown();
        return dimension.valueHmm();
    }

    boolean sawUnknown() {
        return unknown;
    }

    void box(Box box) {
        int[] low = new int[3];
        int[] high = new int[3];
        for (Axis axis : Axis.values()) {
            int from = hmm(box.along(axis).from());
            int to = hmm(box.along(axis).to());
            low[Xyz.of(axis)] = Math.min(from, to);
            high[Xyz.of(axis)] = Math.max(from, to);
        }
        boxes.add(new BruteBox(low, high, false, 0));
    }

    /** A box in a part's own frame: length from, to, width from, to, height from, to. */
    void posed(Pose pose, boolean room, int... local) {
        int[] low = new int[3];
        int[] high = new int[3];
        Heading[] headings = {pose.length(), pose.width(), pose.height()};
        for (int i = 0; i < 3; i++) {
            Axis axis = headings[i].axis();
            int corner = hmm(pose.corner().along(axis));
            int one = corner + headings[i].sign() * local[2 * i];
            int other = corner + headings[i].sign() * local[2 * i + 1];
            low[Xyz.of(axis)] = Math.min(one, other);
            high[Xyz.of(axis)] = Math.max(one, other);
        }
        boxes.add(new BruteBox(low, high, room, 0));
    }

    BruteBody body(BruteBody.Sort sort, String id, List<Face> against, List<String> touches) {
        return new BruteBody(sort, id, unknown, List.copyOf(boxes), Set.copyOf(against), Set.copyOf(touches));
    }
}
