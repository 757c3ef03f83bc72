package loopwright.paper.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import loopwright.catalog.chassis.Shell;
import loopwright.fit.CoveredLayers;
import loopwright.fit.FitCase;
import loopwright.fit.StandingBodies;
import loopwright.fit.StandingBody;
import loopwright.fit.Witness;
import loopwright.geometry.SpaceBox;
import loopwright.geometry.SpaceBox.Reach;
import loopwright.paper.Mm;
import loopwright.paper.book.ViewFrame.Patch;

/**
 * The machine from three sides, to one scale: every body where it stands, numbered, with the tightest places dimensioned.
 *
 * <p>Room that is kept free is dashed. What hangs in a raised cover is drawn outside the panel.
 */
final class SectionViews {

    private static final int SPOTS = 3;
    private static final String RED = "#b3261e";

    /** Length of the bar that shows the scale, mm of the chassis. */
    private static final int BAR_MM = 100;

    private final FitCase fitCase;
    private final SpaceBox inside;
    private final List<SpaceBox> boxes;
    private final List<TightSpot> spots;
    private final Map<String, Integer> numbers = new TreeMap<>();
    private final List<String> names = new ArrayList<>();
    private final double reduction;

    SectionViews(FitCase fitCase, Witness witness) {
        this.fitCase = fitCase;
        List<StandingBody> bodies = new ArrayList<>(StandingBodies.of(fitCase, witness));
        this.spots = TightSpot.of(witness.gaps(), bodies, SPOTS);
        bodies.addAll(CoveredLayers.of(fitCase, witness));
        this.boxes = bodies.stream().flatMap(b -> b.boxes().stream()).toList();
        this.inside = interior(fitCase.chassis().shell().interior());
        List<SpaceBox> all = new ArrayList<>(boxes);
        all.add(inside);
        this.reduction = ViewFrame.reduction(all);
        for (SpaceBox box : boxes) {
            if (!box.room() && numbers.putIfAbsent(box.what(), names.size() + 1) == null) {
                names.add(box.what());
            }
        }
    }

    private static SpaceBox interior(Shell.Interior size) {
        return new SpaceBox(
                "interior",
                true,
                0,
                new Reach(0, size.widthMm().valueHmm()),
                new Reach(0, size.depthMm().valueHmm()),
                new Reach(0, size.heightMm().valueHmm()));
    }

    /** What the numbers mean, in order. */
    List<String> names() {
        return List.copyOf(names);
    }

    /** The tightest places that are dimensioned, in words. */
    List<String> tightest() {
        return spots.stream()
                .map(s -> s.gap().one() + " and " + s.gap().other() + ": "
                        + Mm.text(s.gap().clearanceHmm()) + " mm apart, needs "
                        + Mm.text(s.gap().needHmm()) + " mm")
                .toList();
    }

    /** A drawing. */
    String svg(View view) {
        List<SpaceBox> all = new ArrayList<>(boxes);
        all.add(inside);
        ViewFrame frame = ViewFrame.of(view, all, reduction);
        double up = frame.paperHeightMm() + 3 * BodyNumbers.TYPE_MM;
        Drawing drawing = new Drawing(fitCase.chassis().title() + " " + view.words(), frame.paperWidthMm(), up);
        box(drawing, frame.patch(inside), Drawing.filled("#fbfbf9", "#1c2024", Drawing.WIDE_MM));
        List<SpaceBox> far = boxes.stream().sorted(view.farFirst()).toList();
        far.stream().filter(b -> !b.room()).forEach(b -> box(drawing, frame.patch(b), style(b)));
        far.stream().filter(SpaceBox::room).forEach(b -> box(drawing, frame.patch(b), Drawing.dashed("#7d868f", 0.18)));
        BodyNumbers labels = new BodyNumbers(drawing, frame.paperWidthMm(), frame.paperHeightMm());
        spots.stream().filter(s -> view.shows(s.axis())).forEach(s -> spot(drawing, frame, s, labels));
        far.stream()
                .filter(b -> !b.room())
                .sorted(Comparator.comparingDouble(
                        b -> frame.patch(b).width() * frame.patch(b).height()))
                .forEach(b -> labels.write(number(b), frame.patch(b)));
        foot(drawing, frame, up);
        return drawing.svg();
    }

    private int number(SpaceBox box) {
        return numbers.getOrDefault(box.what(), 0);
    }

    private void foot(Drawing drawing, ViewFrame frame, double up) {
        double y = up - 2.4 * BodyNumbers.TYPE_MM;
        double bar = BAR_MM / reduction;
        double left = ViewFrame.BESIDE_MM;
        String thick = Drawing.stroke("#1c2024", Drawing.WIDE_MM);
        drawing.line(left, y, left + bar, y, thick);
        drawing.line(left, y - 1, left, y + 1, thick);
        drawing.line(left + bar, y - 1, left + bar, y + 1, thick);
        drawing.text(left + bar + 2, y + 1, BodyNumbers.TYPE_MM, "start", BAR_MM + " mm, 1:" + Drawing.n(reduction));
        drawing.text(
                left,
                up - 0.6,
                BodyNumbers.TYPE_MM,
                "start",
                "inside " + Mm.text(length(inside.along(frame.view().across()))) + " x "
                        + Mm.text(length(inside.along(frame.view().up()))) + " mm");
    }

    private static int length(Reach reach) {
        return reach.to() - reach.from();
    }

    private static void box(Drawing drawing, Patch patch, String style) {
        drawing.box(patch.left(), patch.top(), patch.width(), patch.height(), style);
    }

    private static String style(SpaceBox box) {
        String what = box.what();
        String fill = "#e4e2dc";
        if (what.contains("radiator")) {
            fill = "#c9866b";
        } else if (what.contains("fan")) {
            fill = "#a9c2cf";
        } else if (what.startsWith("card")) {
            fill = "#b9a5cf";
        } else if (what.startsWith("supply")) {
            fill = "#8f98a1";
        } else if (what.startsWith("pump") || what.startsWith("reservoir")) {
            fill = "#8fb8a5";
        } else if (what.startsWith("board") || what.startsWith("memory") || what.startsWith("block")) {
            fill = "#d8cf9a";
        }
        return Drawing.filled(fill, "#1c2024", Drawing.NARROW_MM) + " fill-opacity=\"0.72\"";
    }

    private void spot(Drawing drawing, ViewFrame frame, TightSpot spot, BodyNumbers labels) {
        boolean level = spot.axis() == frame.view().across();
        int beside = spot.besideHmm(level ? frame.view().up() : frame.view().across());
        double x1 = level ? frame.x(spot.fromHmm()) : frame.x(beside);
        double y1 = level ? frame.y(beside) : frame.y(spot.fromHmm());
        double x2 = level ? frame.x(spot.toHmm()) : frame.x(beside);
        double y2 = level ? frame.y(beside) : frame.y(spot.toHmm());
        double x = (x1 + x2) / 2;
        double y = (y1 + y2) / 2;
        drawing.line(x1, y1, x2, y2, Drawing.stroke(RED, Drawing.WIDE_MM));
        drawing.circle(x, y, 1.6, Drawing.stroke(RED, Drawing.NARROW_MM));
        labels.dimension(x, y, Mm.text(spot.gap().clearanceHmm()) + " mm");
    }
}
