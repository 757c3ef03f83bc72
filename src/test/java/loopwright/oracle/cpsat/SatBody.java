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
    record SatBox(List<Integer> low, List<Integer> high, Doubt doubt, boolean room, int needHmm) {}

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
        List<Integer> lowDoubt = new ArrayList<>();
        List<Integer> highDoubt = new ArrayList<>();
        for (Span span : List.of(box.xMm(), box.yMm(), box.zMm())) {
            boolean inOrder = read(span.from()) <= read(span.to());
            Dimension first = inOrder ? span.from() : span.to();
            Dimension last = inOrder ? span.to() : span.from();
            low.add(first.valueHmm());
            high.add(last.valueHmm());
            lowDoubt.add(2 * first.plusMinusHmm());
            highDoubt.add(2 * last.plusMinusHmm());
        }
        boxes.add(new SatBox(low, high, new Doubt(lowDoubt, highDoubt, -1), false, 0));
    }

    /** A box in a part's frame: {l0, l1, w0, w1, h0, h1}, and what each of the six may be off by in halves. */
    void inPose(Pose pose, boolean room, List<Integer> local, List<Integer> doubts) {
        Integer[] lowDoubt = new Integer[3];
        Integer[] highDoubt = new Integer[3];
        Integer[] low = new Integer[3];
        Integer[] high = new Integer[3];
        Point corner = pose.corner();
        List<Integer> corners = List.of(read(corner.xMm()), read(corner.yMm()), read(corner.zMm()));
        List<Heading> headings = List.of(pose.length(), pose.width(), pose.height());
        for (int i = 0; i < 3; i++) {
            int axis = headings.get(i).axis().compareTo(loopwright.catalog.basis.Axis.X);
            int a = corners.get(axis) + headings.get(i).sign() * local.get(2 * i);
            int b = corners.get(axis) + headings.get(i).sign() * local.get(2 * i + 1);
            int own = 2
                    * List.of(corner.xMm(), corner.yMm(), corner.zMm())
                            .get(axis)
                            .plusMinusHmm();
            low[axis] = Math.min(a, b);
            high[axis] = Math.max(a, b);
            lowDoubt[axis] = own + doubts.get(a <= b ? 2 * i : 2 * i + 1);
            highDoubt[axis] = own + doubts.get(a <= b ? 2 * i + 1 : 2 * i);
        }
        Doubt doubt = new Doubt(List.of(lowDoubt), List.of(highDoubt), -1);
        boxes.add(new SatBox(List.of(low), List.of(high), doubt, room, 0));
    }

    /** Whether the rules leave this pair out. */
    boolean exempt(SatBody other) {
        boolean bothBuilt = group.startsWith("case:") && other.group.startsWith("case:");
        boolean bothBoard = group.equals("board") && other.group.equals("board");
        return bothBuilt || bothBoard || free.contains(other.group) || other.free.contains(group);
    }
}
