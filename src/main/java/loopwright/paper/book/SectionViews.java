package loopwright.paper.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.chassis.Shell;
import loopwright.fit.FitCase;
import loopwright.fit.StandingBodies;
import loopwright.fit.StandingBody;
import loopwright.fit.Witness;
import loopwright.geometry.SpaceBox;
import loopwright.paper.Mm;

/**
 * The machine from three sides, to scale: every body where it stands, numbered, with the tightest places dimensioned.
 *
 * <p>Room that is kept free is dashed. What hangs in a raised cover lies outside the panel and is not drawn.
 */
final class SectionViews {

    /** Width of the paper that a drawing may take, mm. */
    private static final double PAPER_MM = 170;

    /** Most height, mm. */
    private static final double TALLEST_MM = 205;

    /** Room round a drawing, mm. */
    private static final double EDGE_MM = 8;

    private static final int SPOTS = 3;
    private static final double HMM = 100;
    private static final double LABEL_MM = 2.6;

    private final FitCase fitCase;
    private final List<StandingBody> bodies;
    private final List<TightSpot> spots;
    private final Map<String, Integer> numbers = new TreeMap<>();
    private final List<String> names = new ArrayList<>();

    SectionViews(FitCase fitCase, Witness witness) {
        this.fitCase = fitCase;
        this.bodies = StandingBodies.of(fitCase, witness);
        this.spots = TightSpot.of(witness.gaps(), bodies, SPOTS);
        for (StandingBody body : bodies) {
            for (SpaceBox box : body.boxes()) {
                if (!box.room() && numbers.putIfAbsent(box.what(), names.size() + 1) == null) {
                    names.add(box.what());
                }
            }
        }
    }

    /** What the numbers mean, in order. */
    List<String> names() {
        return List.copyOf(names);
    }

    /** The tightest places that are dimensioned, in words. */
    List<String> tightest() {
        return spots.stream()
                .map(s -> Mm.text(s.gap().marginHmm()) + " mm: " + s.gap().one() + " and "
                        + s.gap().other())
                .toList();
    }

    /** A drawing. */
    String svg(View view) {
        double widthMm = sizeHmm(view.across()) / HMM;
        double heightMm = sizeHmm(view.up()) / HMM;
        double scale = Math.min((PAPER_MM - 2 * EDGE_MM) / widthMm, (TALLEST_MM - 2 * EDGE_MM) / heightMm);
        Page page = new Page(view, scale, heightMm);
        double across = widthMm * scale + 2 * EDGE_MM;
        double up = heightMm * scale + 2 * EDGE_MM;
        Drawing drawing = new Drawing(fitCase.chassis().title() + " " + view.words(), across, up);
        drawing.box(
                EDGE_MM,
                EDGE_MM,
                widthMm * scale,
                heightMm * scale,
                Drawing.filled("#fbfbf9", "#1c2024", Drawing.WIDE_MM));
        List<SpaceBox> boxes = bodies.stream()
                .flatMap(b -> b.boxes().stream())
                .sorted(view.farFirst())
                .toList();
        boxes.stream().filter(b -> !b.room()).forEach(b -> page.box(drawing, b, style(b)));
        boxes.stream().filter(SpaceBox::room).forEach(b -> page.box(drawing, b, Drawing.dashed("#7d868f", 0.18)));
        boxes.stream().filter(b -> !b.room()).forEach(b -> page.number(drawing, b));
        spots.stream().filter(s -> view.shows(s.axis())).forEach(s -> page.spot(drawing, s));
        drawing.text(
                EDGE_MM,
                up - 2,
                LABEL_MM,
                "start",
                view.words() + ", 1:" + Drawing.n(Math.round(10 / scale) / 10.0) + "; inside " + Drawing.n(widthMm)
                        + " x " + Drawing.n(heightMm) + " mm");
        return drawing.svg();
    }

    private int sizeHmm(Axis axis) {
        Shell.Interior inside = fitCase.chassis().shell().interior();
        return switch (axis) {
            case X -> inside.widthMm().valueHmm();
            case Y -> inside.depthMm().valueHmm();
            case Z -> inside.heightMm().valueHmm();
        };
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

    /** Paper coordinates of one view. */
    private final class Page {
        private final View view;
        private final double scale;
        private final double heightMm;

        Page(View view, double scale, double heightMm) {
            this.view = view;
            this.scale = scale;
            this.heightMm = heightMm;
        }

        private double x(int hmm) {
            return EDGE_MM + hmm / HMM * scale;
        }

        private double y(int hmm) {
            return EDGE_MM + (heightMm - hmm / HMM) * scale;
        }

        private double width(SpaceBox box) {
            return (box.along(view.across()).to() - box.along(view.across()).from()) / HMM * scale;
        }

        private double height(SpaceBox box) {
            return (box.along(view.up()).to() - box.along(view.up()).from()) / HMM * scale;
        }

        void box(Drawing drawing, SpaceBox box, String style) {
            drawing.box(
                    x(box.along(view.across()).from()), y(box.along(view.up()).to()), width(box), height(box), style);
        }

        void number(Drawing drawing, SpaceBox box) {
            if (width(box) >= LABEL_MM * 1.5 && height(box) >= LABEL_MM) {
                double x = x(box.along(view.across()).from()) + width(box) / 2;
                double y = y(box.along(view.up()).to()) + height(box) / 2 + LABEL_MM * 0.36;
                drawing.text(x, y, LABEL_MM, "middle", String.valueOf(numbers.get(box.what())));
            }
        }

        void spot(Drawing drawing, TightSpot spot) {
            boolean level = spot.axis() == view.across();
            int beside = spot.besideHmm(level ? view.up() : view.across());
            double x1 = level ? x(spot.fromHmm()) : x(beside);
            double y1 = level ? y(beside) : y(spot.fromHmm());
            double x2 = level ? x(spot.toHmm()) : x(beside);
            double y2 = level ? y(beside) : y(spot.toHmm());
            drawing.line(x1, y1, x2, y2, Drawing.stroke("#b3261e", Drawing.WIDE_MM));
            drawing.circle((x1 + x2) / 2, (y1 + y2) / 2, 1.6, Drawing.stroke("#b3261e", Drawing.NARROW_MM));
            drawing.text(
                    (x1 + x2) / 2 + 2.4,
                    (y1 + y2) / 2 - 1.6,
                    LABEL_MM,
                    "start",
                    Mm.text(spot.gap().clearanceHmm()) + " mm");
        }
    }
}
