package loopwright.workshop.drawing;

import java.util.ArrayList;
import java.util.List;

/** Puts leaves on paper: a sheet of words for each, then its drawing at 1:1 on as many sheets as it takes. */
public final class Sheets {

    /** How far two tiles overlap; common practice, no source. */
    public static final int OVERLAP_HMM = 1500;

    private final Paper paper;
    private final List<Page> pages = new ArrayList<>();

    private Sheets(Paper paper) {
        this.paper = paper;
    }

    /** A sheet that does not know yet how many there are. */
    private record Page(String name, Leaf leaf, Paper paper, List<Sheet.Placed> layers) {}

    /** All leaves on sheets of one paper, numbered through. */
    public static List<Sheet> on(Paper paper, List<Leaf> leaves) {
        Sheets sheets = new Sheets(paper);
        for (Leaf leaf : leaves) {
            sheets.words(leaf);
            sheets.tiles(leaf, Tiles.fewest(paper, leaf.drawing()));
        }
        return sheets.numbered();
    }

    /** A leaf's drawing on one sheet that is as large as it needs, without its words. */
    public static Sheet whole(Leaf leaf) {
        Area all = leaf.drawing().bounds().grown(Tiles.GAP_HMM);
        Sheets sheets = new Sheets(Paper.holding(all));
        sheets.tiles(leaf, Tiles.of(sheets.paper, leaf.drawing(), all));
        return sheets.numbered().get(0);
    }

    private List<Sheet> numbered() {
        List<Sheet> out = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            Page page = pages.get(i);
            String number = (i + 1) + "/" + pages.size();
            List<Sheet.Placed> layers = new ArrayList<>(page.layers());
            PageLayout layout = new PageLayout(page.paper());
            layers.add(still(page.paper(), layout.cautions(page.leaf().cautions())));
            layers.add(still(page.paper(), layout.border(page.leaf().title(), number)));
            out.add(new Sheet(page.name(), page.paper(), layers));
        }
        return List.copyOf(out);
    }

    private static Sheet.Placed still(Paper paper, List<Mark> marks) {
        return new Sheet.Placed(marks, new Area(0, 0, paper.widthHmm(), paper.heightHmm()), 0, 0);
    }

    private void words(Leaf leaf) {
        PageLayout layout = new PageLayout(paper);
        Area area = layout.words();
        List<Mark> marks = new ArrayList<>();
        int y = area.topHmm() - PageLayout.LINE_HMM;
        for (Row row : leaf.words()) {
            if (y < area.bottomHmm() + PageLayout.LINE_HMM) {
                wordsPage(leaf, marks);
                marks = new ArrayList<>();
                y = area.topHmm() - PageLayout.LINE_HMM;
            }
            for (Row.Cell cell : row.cells()) {
                Dot at = new Dot(area.leftHmm() + cell.fromLeftHmm(), y);
                marks.add(new Mark.Text(Layer.WORDS, at, row.heightHmm(), Mark.Stand.STARTS, cell.text()));
            }
            y -= PageLayout.LINE_HMM;
        }
        if (!marks.isEmpty()) {
            wordsPage(leaf, marks);
        }
    }

    private void wordsPage(Leaf leaf, List<Mark> marks) {
        pages.add(new Page(leaf.title().title() + ", words", leaf, paper, List.of(still(paper, marks))));
    }

    private void tiles(Leaf leaf, Tiles tiles) {
        List<Dot> registers = RegisterMarks.of(leaf.drawing(), tiles.across(), tiles.up());
        for (int row = 0; row < tiles.rows(); row++) {
            for (int column = 0; column < tiles.columns(); column++) {
                pages.add(tile(leaf, tiles, new Tiles.Place(row, column), registers));
            }
        }
    }

    private Page tile(Leaf leaf, Tiles tiles, Tiles.Place place, List<Dot> registers) {
        Area view = new PageLayout(tiles.paper()).view();
        Area tile = tiles.area(place);
        int byX = view.leftHmm() - tile.leftHmm();
        int byY = view.bottomHmm() - tile.bottomHmm();
        List<Mark> around = new ArrayList<>(new PageLayout(tiles.paper()).bars());
        around.add(new Mark.Rounded(Layer.WORDS, view, 0));
        around.addAll(tiles.key(place));
        String name = leaf.title().title() + (tiles.isOne() ? "" : ", Tile " + place.name());
        return new Page(
                name,
                leaf,
                tiles.paper(),
                List.of(
                        new Sheet.Placed(leaf.drawing().marks(), view, byX, byY),
                        new Sheet.Placed(RegisterMarks.marks(registers, tile), view, byX, byY),
                        still(tiles.paper(), around)));
    }
}
