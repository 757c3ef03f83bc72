package loopwright.workshop.drawing;

import java.util.ArrayList;
import java.util.List;
import loopwright.workshop.drawing.Tiling.Reach;

/**
 * Marks in the overlap of two tiles, at the same point of the drawing on both: two for each pair of neighbours, far from
 * each other and, where there is room, clear of drilled holes and of words.
 */
final class RegisterMarks {

    /** Diameter of the ring of a mark, and how far its cross reaches. */
    private static final int RING_HMM = 600;

    private static final int REACH_HMM = 500;

    /** Free room that a mark wants from a hole. */
    private static final int FREE_HMM = 600;

    private static final int STEP_HMM = 100;

    /** Larger holes are lines that a mark may cross. */
    private static final int SMALL_HMM = 3000;

    private final Drawing drawing;
    private final List<Area> small;
    private final List<Area> words;
    private final List<Dot> dots = new ArrayList<>();

    private RegisterMarks(Drawing drawing) {
        this.drawing = drawing;
        this.small = drawing.wholes().stream()
                .filter(w -> w.widthHmm() < SMALL_HMM && w.heightHmm() < SMALL_HMM)
                .toList();
        this.words = drawing.marks().stream()
                .filter(Mark.Text.class::isInstance)
                .map(m -> ((Mark.Text) m).about())
                .toList();
    }

    /** The points of all marks. */
    static List<Dot> of(Drawing drawing, Tiling across, Tiling up) {
        RegisterMarks marks = new RegisterMarks(drawing);
        for (int row = 0; row < up.count(); row++) {
            for (int column = 0; column + 1 < across.count(); column++) {
                int x = middle(across.reach(column), across.reach(column + 1));
                marks.two(marks.shown(up.reach(row), true), y -> new Dot(x, y));
            }
        }
        for (int column = 0; column < across.count(); column++) {
            for (int row = 0; row + 1 < up.count(); row++) {
                int y = middle(up.reach(row), up.reach(row + 1));
                marks.two(marks.shown(across.reach(column), false), x -> new Dot(x, y));
            }
        }
        return List.copyOf(marks.dots);
    }

    /** The part of a tile that has something of the drawing in it. */
    private Reach shown(Reach tile, boolean up) {
        Area bounds = drawing.needed();
        int low = up ? bounds.bottomHmm() : bounds.leftHmm();
        int high = up ? bounds.topHmm() : bounds.rightHmm();
        return new Reach(Math.max(tile.fromHmm(), low), Math.min(tile.toHmm(), high));
    }

    private static int middle(Reach one, Reach next) {
        return (one.toHmm() + next.fromHmm()) / 2;
    }

    private void two(Reach along, java.util.function.IntFunction<Dot> at) {
        int span = along.toHmm() - along.fromHmm();
        dots.add(free(along.fromHmm() + span / 8, along.fromHmm() + span * 9 / 20, at));
        dots.add(free(along.toHmm() - span / 8, along.toHmm() - span * 9 / 20, at));
    }

    /** The first point from one end to the other that is clear of holes; the first one if none is. */
    private Dot free(int from, int to, java.util.function.IntFunction<Dot> at) {
        int step = from < to ? STEP_HMM : -STEP_HMM;
        for (int s = from; step > 0 ? s <= to : s >= to; s += step) {
            Dot dot = at.apply(s);
            Area room = Area.round(dot, 2 * REACH_HMM + 2 * FREE_HMM, 2 * REACH_HMM + 2 * FREE_HMM);
            if (small.stream().noneMatch(room::meets)
                    && words.stream().noneMatch(Area.round(dot, 2 * REACH_HMM, 2 * REACH_HMM)::meets)) {
                return dot;
            }
        }
        return at.apply(from);
    }

    /** What is drawn on a tile for the marks that lie whole in it, numbered. */
    static List<Mark> marks(List<Dot> dots, Area tile) {
        List<Mark> out = new ArrayList<>();
        for (int i = 0; i < dots.size(); i++) {
            Dot dot = dots.get(i);
            if (!tile.holds(Area.round(dot, 2 * REACH_HMM, 2 * REACH_HMM))) {
                continue;
            }
            out.add(new Mark.Circle(Layer.REGISTER, dot, RING_HMM));
            out.add(new Mark.Line(Layer.REGISTER, dot.plus(-REACH_HMM, 0), dot.plus(REACH_HMM, 0)));
            out.add(new Mark.Line(Layer.REGISTER, dot.plus(0, -REACH_HMM), dot.plus(0, REACH_HMM)));
            out.add(new Mark.Text(Layer.REGISTER, dot.plus(180, 420), 180, Mark.Stand.STARTS, "R" + (i + 1)));
        }
        return out;
    }
}
