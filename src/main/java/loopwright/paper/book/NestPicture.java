package loopwright.paper.book;

import java.util.List;
import loopwright.quantity.Hundredths;
import loopwright.workshop.template.Nest;
import loopwright.workshop.template.NestCuts;

/** Pieces on their stock, with the cuts numbered in the order they are made; waste stays white. */
final class NestPicture {

    private static final double EDGE_MM = 4;
    private static final double WIDE_MM = 120;
    private static final double TYPE_MM = 3;

    private final Nest nest;
    private final double scale;

    NestPicture(Nest nest) {
        this.nest = nest;
        this.scale = WIDE_MM * Hundredths.PER_MM / nest.lengthHmm();
    }

    String svg(String title) {
        double sheetHigh = mm(nest.widthHmm()) + EDGE_MM;
        Drawing drawing = new Drawing(title, WIDE_MM + 2 * EDGE_MM, nest.sheets() * sheetHigh + EDGE_MM);
        for (int sheet = 1; sheet <= nest.sheets(); sheet++) {
            drawing.box(
                    EDGE_MM,
                    top(sheet),
                    WIDE_MM,
                    mm(nest.widthHmm()),
                    Drawing.filled("#ffffff", "#1c2024", Drawing.NARROW_MM));
        }
        for (Nest.Laid laid : nest.laid()) {
            double x = EDGE_MM + mm(laid.xHmm());
            double y = y(laid.sheet(), laid.yHmm() + laid.piece().widthHmm());
            double wide = mm(laid.piece().lengthHmm());
            double high = mm(laid.piece().widthHmm());
            drawing.box(x, y, wide, high, Drawing.filled("#d3dade", "#1c2024", Drawing.WIDE_MM));
            drawing.text(
                    x + wide / 2, y + high / 2, TYPE_MM, "middle", laid.piece().id());
        }
        List<NestCuts.Cut> cuts = NestCuts.of(nest);
        for (int i = 0; i < cuts.size(); i++) {
            cut(drawing, cuts.get(i), String.valueOf(i + 1));
        }
        return drawing.svg();
    }

    private void cut(Drawing drawing, NestCuts.Cut cut, String number) {
        double at = cut.level() ? y(cut.sheet(), cut.atHmm()) : EDGE_MM + mm(cut.atHmm());
        double from = cut.level() ? EDGE_MM + mm(cut.fromHmm()) : y(cut.sheet(), cut.fromHmm());
        double to = cut.level() ? EDGE_MM + mm(cut.toHmm()) : y(cut.sheet(), cut.toHmm());
        String style = Drawing.dashed("#1c2024", Drawing.NARROW_MM);
        if (cut.level()) {
            drawing.line(from, at, to, at, style);
            drawing.text(to - 1, at - 1, TYPE_MM, "end", number);
        } else {
            drawing.line(at, from, at, to, style);
            drawing.text(at + 1, to + TYPE_MM, TYPE_MM, "start", number);
        }
    }

    private double mm(int hmm) {
        return (double) hmm / Hundredths.PER_MM * scale;
    }

    private double top(int sheet) {
        return EDGE_MM + (sheet - 1) * (mm(nest.widthHmm()) + EDGE_MM);
    }

    private double y(int sheet, int hmm) {
        return top(sheet) + mm(nest.widthHmm() - hmm);
    }
}
