package loopwright.workshop.template;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import loopwright.quantity.Hundredths;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Dot;
import loopwright.workshop.drawing.Layer;
import loopwright.workshop.drawing.Mark;

/**
 * Superimposed running dimensions, ISO 129-1: all from a common origin, each value at the end of its extension line.
 * On the side of datum edge B for what lies across, of datum edge A for what lies upwards.
 */
final class RunningDimensions {

    /** From the edge to the line that carries the arrows. */
    private static final int AWAY_HMM = 500;

    /** From there to the values. */
    private static final int VALUE_HMM = 400;

    /** Least distance of two values. */
    private static final int APART_HMM = 330;

    private static final int ARROW_HMM = 200;
    private static final int HALF_HMM = 60;

    private final Plan plan;
    private final boolean across;
    private final List<Mark> marks = new ArrayList<>();

    private RunningDimensions(Plan plan, boolean across) {
        this.plan = plan;
        this.across = across;
    }

    /** Both rows of dimensions. */
    static List<Mark> of(Plan plan) {
        List<Mark> out = new ArrayList<>();
        for (boolean across : List.of(true, false)) {
            RunningDimensions row = new RunningDimensions(plan, across);
            row.draw();
            out.addAll(row.marks);
        }
        return out;
    }

    /** Where holes have their middles and windows their edges, and where a sheet that is made ends. */
    private SortedSet<Integer> stations() {
        SortedSet<Integer> out = new TreeSet<>();
        if (plan.edge().layer() == Layer.CUT) {
            Area made = plan.edge().area();
            out.add(across ? made.rightHmm() : made.topHmm());
        }
        for (Hole hole : plan.holes()) {
            Dot centre = hole.centre();
            out.add(across ? centre.xHmm() : centre.yHmm());
            if (hole instanceof Hole.Window window) {
                Area area = window.area();
                out.add(across ? area.leftHmm() : area.bottomHmm());
                out.add(across ? area.rightHmm() : area.topHmm());
            }
        }
        return out;
    }

    /** The side on which the values stand: that of the datum edge. */
    private int outer() {
        Area all = plan.edge().area();
        for (Plan.Patch patch : plan.patches()) {
            all = all.with(patch.area());
        }
        return across
                ? plan.edge().fromTop() ? all.topHmm() : all.bottomHmm()
                : plan.edge().fromRight() ? all.rightHmm() : all.leftHmm();
    }

    /** A point so far along the row, at a distance from the drawing. */
    private Dot dot(int alongHmm, int awayHmm) {
        boolean beyond = across ? plan.edge().fromTop() : plan.edge().fromRight();
        int at = outer() + (beyond ? awayHmm : -awayHmm);
        return across ? new Dot(alongHmm, at) : new Dot(at, alongHmm);
    }

    private Mark.Stand stand() {
        if (across) {
            return plan.edge().fromTop() ? Mark.Stand.STARTS_UP : Mark.Stand.ENDS_UP;
        }
        return plan.edge().fromRight() ? Mark.Stand.STARTS : Mark.Stand.ENDS;
    }

    private void line(Dot from, Dot to) {
        marks.add(new Mark.Line(Layer.DIMENSION, from, to));
    }

    private void draw() {
        Plan.Edge edge = plan.edge();
        Area area = edge.area();
        int origin = across
                ? edge.fromRight() ? area.rightHmm() : area.leftHmm()
                : edge.fromTop() ? area.topHmm() : area.bottomHmm();
        SortedSet<Integer> stations = stations();
        if (stations.isEmpty()) {
            return;
        }
        int low = Math.min(origin, stations.first());
        int high = Math.max(origin, stations.last());
        line(dot(low, AWAY_HMM), dot(high, AWAY_HMM));
        marks.add(new Mark.Circle(Layer.DIMENSION, dot(origin, AWAY_HMM), 200));
        line(dot(origin, 100), dot(origin, AWAY_HMM + 100));
        int free = Integer.MIN_VALUE;
        for (int station : stations) {
            int at = Math.max(station, free);
            free = at + APART_HMM;
            station(station, at, Integer.signum(station - origin));
            int value = across ? edge.acrossHmm(station) : edge.upHmm(station);
            marks.add(new Mark.Text(
                    Layer.DIMENSION, dot(at, AWAY_HMM + VALUE_HMM + 80), 250, stand(), Hundredths.text(value)));
        }
    }

    /** Its extension line, bent to its value, and an arrow that points away from the origin. */
    private void station(int station, int at, int way) {
        line(dot(station, 100), dot(station, AWAY_HMM + 100));
        line(dot(station, AWAY_HMM + 100), dot(at, AWAY_HMM + VALUE_HMM));
        if (way != 0) {
            line(dot(station, AWAY_HMM), dot(station - way * ARROW_HMM, AWAY_HMM - HALF_HMM));
            line(dot(station, AWAY_HMM), dot(station - way * ARROW_HMM, AWAY_HMM + HALF_HMM));
        }
    }
}
