package loopwright.workshop.drawing;

import java.util.ArrayList;
import java.util.List;
import loopwright.workshop.drawing.Tiling.Reach;

/**
 * The tiles that one drawing takes, in rows from the top and columns from the left, as they are laid out to be joined.
 *
 * @param paper as it lies: upright or turned, whichever takes fewer sheets
 */
record Tiles(Paper paper, Tiling across, Tiling up) {

    /** What is left between the drawing and the edge of what shows. */
    static final int GAP_HMM = 200;

    private static final int CELL_WIDE_HMM = 900;
    private static final int CELL_HIGH_HMM = 500;

    /** A tile: its row from the top, its column from the left. */
    record Place(int row, int column) {
        String name() {
            return "" + (char) ('A' + column) + (row + 1);
        }
    }

    /** As few sheets as show what is needed; upright where both ways take as many. */
    static Tiles fewest(Paper paper, Drawing drawing) {
        Area needed = drawing.needed().grown(GAP_HMM);
        Tiles upright = of(paper, drawing, needed);
        Tiles turned = of(paper.turned(), drawing, needed);
        return turned.count() < upright.count() ? turned : upright;
    }

    /** Sheets that show an area. */
    static Tiles of(Paper paper, Drawing drawing, Area shown) {
        Area view = new PageLayout(paper).view();
        List<Reach> widths = new ArrayList<>();
        List<Reach> heights = new ArrayList<>();
        for (Area whole : drawing.wholes()) {
            widths.add(new Reach(whole.leftHmm() - GAP_HMM, whole.rightHmm() + GAP_HMM));
            heights.add(new Reach(whole.bottomHmm() - GAP_HMM, whole.topHmm() + GAP_HMM));
        }
        return new Tiles(
                paper,
                Tiling.centred(
                        new Reach(shown.leftHmm(), shown.rightHmm()), widths, view.widthHmm(), Sheets.OVERLAP_HMM),
                Tiling.centred(
                        new Reach(shown.bottomHmm(), shown.topHmm()), heights, view.heightHmm(), Sheets.OVERLAP_HMM));
    }

    int rows() {
        return up.count();
    }

    int columns() {
        return across.count();
    }

    private int count() {
        return rows() * columns();
    }

    boolean isOne() {
        return count() == 1;
    }

    /** What a tile shows. */
    Area area(Place place) {
        Reach x = across.reach(place.column());
        Reach y = up.reach(rows() - 1 - place.row());
        return new Area(x.fromHmm(), y.fromHmm(), x.toHmm(), y.toHmm());
    }

    /** Which tile it is, in words and as a little picture of all of them; nothing where there is only one. */
    List<Mark> key(Place here) {
        List<Mark> out = new ArrayList<>();
        if (isOne()) {
            return out;
        }
        Area view = new PageLayout(paper).view();
        Dot corner = new Dot(view.rightHmm() - 200 - columns() * CELL_WIDE_HMM, view.bottomHmm() - 200);
        out.add(new Mark.Text(
                Layer.WORDS,
                corner.plus(-200, -CELL_HIGH_HMM / 2),
                Row.WORDS_HMM,
                Mark.Stand.ENDS,
                "Tile " + here.name() + ": join at R"));
        for (int row = 0; row < rows(); row++) {
            for (int column = 0; column < columns(); column++) {
                Place place = new Place(row, column);
                Dot at = corner.plus(column * CELL_WIDE_HMM, -(row + 1) * CELL_HIGH_HMM);
                Area cell = Area.between(at, at.plus(CELL_WIDE_HMM, CELL_HIGH_HMM));
                out.add(new Mark.Rounded(Layer.WORDS, cell, 0));
                if (place.equals(here)) {
                    out.add(new Mark.Rounded(Layer.BAR, cell.grown(-50), 0));
                }
                out.add(new Mark.Text(Layer.WORDS, cell.centre(), 250, Mark.Stand.MIDDLE, place.name()));
            }
        }
        return out;
    }
}
