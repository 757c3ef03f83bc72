package loopwright.paper.book;

import java.util.List;
import loopwright.catalog.chassis.Panel;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.template.Hole;
import loopwright.workshop.template.PanelTemplate;

/** A panel as it is delivered and as it leaves the bench, side by side, seen from outside; not to be cut by. */
final class BeforeAfter {

    /** Width of one of the two on paper, mm. */
    private static final double HALF_MM = 78;

    /** Most height, mm. */
    private static final double TALLEST_MM = 95;

    private static final double GAP_MM = 10;
    private static final double EDGE_MM = 4;
    private static final double TYPE_MM = 3;
    private static final double HMM_PER_MM = 100;

    private final PanelTemplate template;
    private final Area sheet;
    private final double scale;

    BeforeAfter(PanelTemplate template, Area sheet) {
        this.template = template;
        this.sheet = sheet;
        this.scale = Math.min(HALF_MM / (sheet.widthHmm() / HMM_PER_MM), TALLEST_MM / (sheet.heightHmm() / HMM_PER_MM));
    }

    String svg() {
        double width = sheet.widthHmm() / HMM_PER_MM * scale;
        double height = sheet.heightHmm() / HMM_PER_MM * scale;
        Drawing drawing = new Drawing(
                template.id() + " before and after",
                2 * width + GAP_MM + 2 * EDGE_MM,
                height + 2 * EDGE_MM + TYPE_MM * 2);
        panel(drawing, EDGE_MM);
        double after = EDGE_MM + width + GAP_MM;
        panel(drawing, after);
        for (Hole hole : template.holes()) {
            cut(drawing, after, hole);
        }
        double below = height + EDGE_MM + TYPE_MM * 1.6;
        drawing.text(EDGE_MM, below, TYPE_MM, "start", template.id() + " as delivered");
        drawing.text(after, below, TYPE_MM, "start", "after the cuts");
        return drawing.svg();
    }

    private void panel(Drawing drawing, double left) {
        box(drawing, left, sheet, Drawing.filled("#eef0f1", "#1c2024", Drawing.WIDE_MM));
        Panel.Features features = template.view().panel().features();
        marks(drawing, left, features.perforated(), Drawing.filled("#d3dade", "#7d868f", 0.18));
        marks(drawing, left, features.slots(), Drawing.filled("#ffffff", "#1c2024", Drawing.NARROW_MM));
        marks(drawing, left, features.folds(), Drawing.dashed("#1c2024", Drawing.NARROW_MM));
        marks(drawing, left, features.clips(), Drawing.dashed("#7d868f", Drawing.NARROW_MM));
    }

    private void marks(Drawing drawing, double left, List<Panel.Feature> features, String style) {
        for (Panel.Feature feature : features) {
            template.view().area(feature.at()).map(this::within).ifPresent(a -> box(drawing, left, a, style));
        }
    }

    /** What of an area lies on the sheet. */
    private Area within(Area area) {
        int left = Math.max(area.leftHmm(), sheet.leftHmm());
        int bottom = Math.max(area.bottomHmm(), sheet.bottomHmm());
        return new Area(
                left,
                bottom,
                Math.max(left, Math.min(area.rightHmm(), sheet.rightHmm())),
                Math.max(bottom, Math.min(area.topHmm(), sheet.topHmm())));
    }

    private void cut(Drawing drawing, double left, Hole hole) {
        Area reach = hole.reach();
        String style = Drawing.filled("#ffffff", "#b3261e", Drawing.NARROW_MM);
        if (hole instanceof Hole.Round) {
            double radius = reach.widthHmm() / HMM_PER_MM * scale / 2;
            drawing.circle(x(left, reach.leftHmm()) + radius, y(reach.topHmm()) + radius, Math.max(radius, 0.3), style);
        } else {
            box(drawing, left, reach, style);
        }
    }

    private void box(Drawing drawing, double left, Area area, String style) {
        drawing.box(
                x(left, area.leftHmm()),
                y(area.topHmm()),
                area.widthHmm() / HMM_PER_MM * scale,
                area.heightHmm() / HMM_PER_MM * scale,
                style);
    }

    private double x(double left, int hmm) {
        return left + (hmm - sheet.leftHmm()) / HMM_PER_MM * scale;
    }

    private double y(int hmm) {
        return EDGE_MM + (sheet.topHmm() - hmm) / HMM_PER_MM * scale;
    }
}
