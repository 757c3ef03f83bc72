package loopwright.oracle.cpsat;

import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.basis.Box;
import loopwright.catalog.basis.Heading;
import loopwright.catalog.basis.Point;
import loopwright.catalog.basis.Pose;
import loopwright.catalog.basis.Span;
import loopwright.quantity.Dimension;

/** Boxes of a body as six numbers each (low and high of x, y, z), there when all of its literals hold. */
final class SatBody {
    /** One box; {@code low} and {@code high} hold x, y, z in hundredths of a millimetre. */
    record SatBox(List<Integer> low, List<Integer> high, boolean room, int needHmm) {}

    final List<Literal> when;
    final String group;
    final List<String> free;
    final List<SatBox> boxes = new ArrayList<>();
    boolean blind;

    /**
     * A body.
     *
     * @param group {@code case:ID}, {@code board}, or empty: bodies of one group are never a pair
     * @param free walls by name and chassis bodies by {@code case:ID} it may touch
     */
    SatBody(List<Literal> when, String group, List<String> free) {
        this.when = when;
        this.group = group;
        this.free = free;
    }

    int read(Dimension dimension) {
        blind |= dimension.isUnknown();
        return dimension.valueHmm();
    }

    void fixed(Box box) {
        List<Integer> low = new ArrayList<>();
        List<Integer> high = new ArrayList<>();
        for (Span span : List.of(box.xMm(), box.yMm(), box.zMm())) {
            low.add(Math.min(read(span.from()), read(span.to())));
            high.add(Math.max(read(span.from()), read(span.to())));
        }
        boxes.add(new SatBox(low, high, false, 0));
    }

    /** A box in a part's frame: {l0, l1, w0, w1, h0, h1}. */
    void inPose(Pose pose, boolean room, List<Integer> local) {
        Integer[] low = new Integer[3];
        Integer[] high = new Integer[3];
        Point corner = pose.corner();
        List<Integer> corners = List.of(read(corner.xMm()), read(corner.yMm()), read(corner.zMm()));
        List<Heading> headings = List.of(pose.length(), pose.width(), pose.height());
        for (int i = 0; i < 3; i++) {
            int axis = headings.get(i).axis().compareTo(loopwright.catalog.basis.Axis.X);
            int a = corners.get(axis) + headings.get(i).sign() * local.get(2 * i);
            int b = corners.get(axis) + headings.get(i).sign() * local.get(2 * i + 1);
            low[axis] = Math.min(a, b);
            high[axis] = Math.max(a, b);
        }
        boxes.add(new SatBox(List.of(low), List.of(high), room, 0));
    }

    /** Whether the rules leave this pair out. */
    boolean exempt(SatBody other) {
        boolean bothBuilt = group.startsWith("case:") && other.group.startsWith("case:");
        boolean bothBoard = group.equals("board") && other.group.equals("board");
        return bothBuilt || bothBoard || free.contains(other.group) || other.free.contains(group);
    }
}
