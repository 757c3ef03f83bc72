package loopwright.workshop.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loopwright.catalog.chassis.Panel;
import loopwright.quantity.Hundredths;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Dot;
import loopwright.workshop.drawing.Drawing;
import loopwright.workshop.drawing.Layer;
import loopwright.workshop.drawing.Leaf;
import loopwright.workshop.drawing.Mark;
import loopwright.workshop.drawing.Row;
import loopwright.workshop.drawing.TitleBlock;

/**
 * Pieces on their sheets of stock, with the cuts numbered in their order. Not at true scale: a scale of ISO 5455 at
 * which it goes on one A4.
 */
final class NestDrawing {

    /** Reduction scales of ISO 5455. */
    private static final List<Integer> SCALES = List.of(1, 2, 5, 10, 20, 50);

    /** What an A4 shows, less a little. */
    private static final int WIDE_HMM = 16_500;

    private static final int HIGH_HMM = 20_000;

    /** Between two sheets of stock, for the words under each. */
    private static final int APART_HMM = 1000;

    private static final int SMALL_HMM = 180;
    private static final int NUMBER_HMM = 250;

    private final Nest nest;
    private final int scale;
    private final List<Mark> marks = new ArrayList<>();

    NestDrawing(Nest nest) {
        this.nest = nest;
        this.scale = SCALES.stream()
                .filter(s -> nest.lengthHmm() / s <= WIDE_HMM
                        && nest.sheets() * (nest.widthHmm() / s + APART_HMM) <= HIGH_HMM)
                .findFirst()
                .orElse(SCALES.get(SCALES.size() - 1));
    }

    /** The leaf of a material. */
    Leaf leaf(Panel.Material material, Setting.Identity identity, List<String> words) {
        List<NestCuts.Cut> cuts = NestCuts.of(nest);
        for (int sheet = 1; sheet <= nest.sheets(); sheet++) {
            stock(sheet);
        }
        nest.laid().forEach(this::piece);
        for (int i = 0; i < cuts.size(); i++) {
            cut(cuts.get(i), i + 1);
        }
        String name = "Stock of " + PanelTemplate.words(material);
        List<Row> rows = new ArrayList<>();
        rows.add(Row.heading(name));
        words.forEach(line -> rows.addAll(Row.wrapped(line)));
        rows.add(Row.blank());
        rows.addAll(
                Row.wrapped(
                        "Measures are edges of pieces; the blade goes beside the line, away from the piece. Each cut"
                                + " goes right across what is in hand. Keep the film on acrylic; support both sides of the cut."));
        String ratio = "1:" + scale;
        TitleBlock title = new TitleBlock(
                name, "cut order; not for laying on", identity.line(), "Cutting plan", ratio, identity.date());
        Area bounds = new Area(0, -APART_HMM, at(nest.lengthHmm()), nest.sheets() * (at(nest.widthHmm()) + APART_HMM))
                .grown(100);
        Drawing drawing = new Drawing(marks, bounds, bounds, List.of());
        return new Leaf(title, drawing, rows, Cautions.lines(name + ", " + ratio + ": cut to the numbers.", false));
    }

    private int at(int hmm) {
        return hmm / scale;
    }

    /** Where the lower left corner of a sheet of stock lies; the first on top. */
    private Dot corner(int sheet) {
        return new Dot(0, (nest.sheets() - sheet) * (at(nest.widthHmm()) + APART_HMM));
    }

    private Area area(int sheet, Area onStock) {
        Dot corner = corner(sheet);
        return new Area(
                at(onStock.leftHmm()),
                corner.yHmm() + at(onStock.bottomHmm()),
                at(onStock.rightHmm()),
                corner.yHmm() + at(onStock.topHmm()));
    }

    private void stock(int sheet) {
        Area area = area(sheet, new Area(0, 0, nest.lengthHmm(), nest.widthHmm()));
        marks.add(new Mark.Rounded(Layer.PANEL, area, 0));
        marks.add(new Mark.Text(
                Layer.WORDS,
                new Dot(0, area.bottomHmm() - 400),
                NUMBER_HMM,
                Mark.Stand.STARTS,
                "sheet " + sheet + " of " + nest.sheets() + ", " + size(nest.lengthHmm(), nest.widthHmm())
                        + String.format(
                                Locale.ROOT,
                                ", waste in all %.0f %%, %.0f mm\u00b2",
                                nest.wastePercent(),
                                nest.wasteSquareMm())));
    }

    private static String size(int lengthHmm, int widthHmm) {
        return Hundredths.text(lengthHmm) + " x " + Hundredths.text(widthHmm);
    }

    private void piece(Nest.Laid laid) {
        int right = laid.xHmm() + laid.piece().lengthHmm();
        int top = laid.yHmm() + laid.piece().widthHmm();
        Area area = area(laid.sheet(), new Area(laid.xHmm(), laid.yHmm(), right, top));
        marks.add(new Mark.Rounded(Layer.CUT, area, 0));
        boolean upright = area.heightHmm() > area.widthHmm();
        Mark.Stand stand = upright ? Mark.Stand.MIDDLE_UP : Mark.Stand.MIDDLE;
        Dot middle = area.centre();
        int line = 200;
        marks.add(new Mark.Text(
                Layer.WORDS,
                middle.plus(upright ? -line : 0, upright ? 0 : line),
                SMALL_HMM,
                stand,
                laid.piece().id()));
        marks.add(new Mark.Text(
                Layer.WORDS,
                middle.plus(upright ? line : 0, upright ? 0 : -line),
                SMALL_HMM,
                stand,
                size(laid.piece().lengthHmm(), laid.piece().widthHmm())));
    }

    private void cut(NestCuts.Cut cut, int number) {
        Dot corner = corner(cut.sheet());
        Dot from = cut.level()
                ? corner.plus(at(cut.fromHmm()), at(cut.atHmm()))
                : corner.plus(at(cut.atHmm()), at(cut.fromHmm()));
        Dot to = cut.level()
                ? corner.plus(at(cut.toHmm()), at(cut.atHmm()))
                : corner.plus(at(cut.atHmm()), at(cut.toHmm()));
        marks.add(new Mark.Line(Layer.CENTRE, from, to));
        Dot label = cut.level() ? to.plus(-350, 300) : to.plus(350, -350);
        marks.add(new Mark.Circle(Layer.DIMENSION, label, 460));
        marks.add(new Mark.Text(Layer.WORDS, label, NUMBER_HMM, Mark.Stand.MIDDLE, String.valueOf(number)));
    }
}
