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

    Len len(Dimension dimension) {
        unknown |= dimension.isUnknown();
        return Len.of(dimension);
    }

    /** Room that is kept free, as much as is said. */
    Len kept(Dimension dimension) {
        return Len.exact(hmm(dimension));
    }

    boolean sawUnknown() {
        return unknown;
    }

    void box(Box box) {
        Len[] from = new Len[3];
        Len[] to = new Len[3];
        for (Axis axis : Axis.values()) {
            from[Xyz.of(axis)] = len(box.along(axis).from());
            to[Xyz.of(axis)] = len(box.along(axis).to());
        }
        boxes.add(BruteBox.of(from, to, BruteBox.NOWHERE, false, 0));
    }

    /** A box in a part's own frame: length from, to, width from, to, height from, to. */
    void posed(Pose pose, boolean room, Len... local) {
        Len[] from = new Len[3];
        Len[] to = new Len[3];
        Heading[] headings = {pose.length(), pose.width(), pose.height()};
        for (int i = 0; i < 3; i++) {
            Axis axis = headings[i].axis();
            Len corner = len(pose.corner().along(axis));
            boolean up = headings[i].sign() > 0;
            from[Xyz.of(axis)] = corner.plus(up ? local[2 * i] : local[2 * i].turned());
            to[Xyz.of(axis)] = corner.plus(up ? local[2 * i + 1] : local[2 * i + 1].turned());
        }
        boxes.add(BruteBox.of(from, to, BruteBox.NOWHERE, room, 0));
    }

    BruteBody body(BruteBody.Sort sort, String id, List<Face> against, List<String> touches) {
        return new BruteBody(sort, id, unknown, List.copyOf(boxes), Set.copyOf(against), Set.copyOf(touches));
    }
}
