package loopwright.workshop.drawing;

import java.util.ArrayList;
import java.util.List;
import loopwright.workshop.drawing.Tiling.Reach;

/** Puts leaves on paper: a sheet of words for each, then its drawing at 1:1 on as many sheets as it takes. */
public final class Sheets {

    /** How far two tiles overlap; common practice, no source. */
    public static final int OVERLAP_HMM = 1500;

    /** What is left between the drawing and the edge of what shows. */
    private static final int GAP_HMM = 200;

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
            sheets.tiles(leaf);
        }
        return sheets.numbered();
    }

    /** A leaf's drawing on one sheet that is as large as it needs, without its words. */
    public static Sheet whole(Leaf leaf) {
        Sheets sheets = new Sheets(Paper.holding(leaf.drawing().bounds().grown(GAP_HMM)));
        sheets.tiles(leaf);
        return sheets.numbered().get(0);
    }

    private List<Sheet> numbered() {
        List<Sheet> out = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            Page page = pages.get(i);
            String number = (i + 1) + "/" + pages.size();
            List<Sheet.Placed> layers = new ArrayList<>(page.layers());
            PageLayout layout = new PageLayout(page.paper());
            layers.add(still(layout.cautions(page.leaf().cautions())));
            layers.add(still(layout.border(page.leaf().title(), number)));
            out.add(new Sheet(page.name(), page.paper(), layers));
        }
        return List.copyOf(out);
    }

    private Sheet.Placed still(List<Mark> marks) {
        return new Sheet.Placed(marks, new Area(0, 0, paper.widthHmm(), paper.heightHmm()), 0, 0);
    }

    private void words(Leaf leaf) {
        PageLayout layout = new PageLayout(paper);
        Area area = layout.words();
        List<Mark> marks = new ArrayList<>();
        int y = area.topHmm() - PageLayout.LINE_HMM;
        for (Row row : leaf.words()) {
            if (y < area.bottomHmm() + PageLayout.LINE_HMM) {
                pages.add(new Page(leaf.title().title() + ", words", leaf, paper, List.of(still(marks))));
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
            pages.add(new Page(leaf.title().title() + ", words", leaf, paper, List.of(still(marks))));
        }
    }

    private void tiles(Leaf leaf) {
        PageLayout layout = new PageLayout(paper);
        Area view = layout.view();
        Area all = leaf.drawing().bounds().grown(GAP_HMM);
        List<Reach> widths = new ArrayList<>();
        List<Reach> heights = new ArrayList<>();
        for (Area whole : leaf.drawing().wholes()) {
            widths.add(new Reach(whole.leftHmm() - GAP_HMM, whole.rightHmm() + GAP_HMM));
            heights.add(new Reach(whole.bottomHmm() - GAP_HMM, whole.topHmm() + GAP_HMM));
        }
        Tiling across = Tiling.of(new Reach(all.leftHmm(), all.rightHmm()), widths, view.widthHmm(), OVERLAP_HMM);
        Tiling up = Tiling.of(new Reach(all.bottomHmm(), all.topHmm()), heights, view.heightHmm(), OVERLAP_HMM);
        List<Dot> registers = RegisterMarks.of(leaf.drawing(), across, up);
        for (int row = up.count() - 1; row >= 0; row--) {
            for (int column = 0; column < across.count(); column++) {
                boolean only = across.count() * up.count() == 1;
                String tile =
                        only ? "" : "Tile " + (char) ('A' + column) + (up.count() - row) + ": join at the marks R";
                pages.add(tile(leaf, new Corner(across.reach(column), up.reach(row)), registers, tile));
            }
        }
    }

    private record Corner(Reach across, Reach up) {
        Area area() {
            return new Area(across.fromHmm(), up.fromHmm(), across.toHmm(), up.toHmm());
        }
    }

    private Page tile(Leaf leaf, Corner tile, List<Dot> registers, String words) {
        PageLayout layout = new PageLayout(paper);
        Area view = layout.view();
        int byX = view.leftHmm() - tile.across().fromHmm();
        int byY = view.bottomHmm() - tile.up().fromHmm();
        List<Mark> around = new ArrayList<>(layout.bars());
        around.add(new Mark.Rounded(Layer.WORDS, view, 0));
        if (!words.isEmpty()) {
            Dot at = new Dot(view.rightHmm() - 200, view.bottomHmm() - 400);
            around.add(new Mark.Text(Layer.WORDS, at, Row.WORDS_HMM, Mark.Stand.ENDS, words));
        }
        String name = leaf.title().title() + (words.isEmpty() ? "" : ", " + words.substring(0, 7));
        return new Page(
                name,
                leaf,
                paper,
                List.of(
                        new Sheet.Placed(leaf.drawing().marks(), view, byX, byY),
                        new Sheet.Placed(RegisterMarks.marks(registers, tile.area()), view, byX, byY),
                        still(around)));
    }
}
