package loopwright.workshop.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How drawings come onto paper. */
class SheetsTest {

    private static final TitleBlock TITLE = new TitleBlock("t", "s", "i", "k", "1:1", "");

    private static Leaf leaf(Area bounds, Area needed) {
        Mark line = new Mark.Line(Layer.CUT, new Dot(0, 0), new Dot(100, 100));
        return new Leaf(TITLE, new Drawing(List.of(line), bounds, needed, List.of()), List.of(), List.of());
    }

    /** What is not needed is not printed: a panel of 400 x 400 with a hole in its corner takes one sheet. */
    @Test
    void printsWhatIsNeeded() {
        Area panel = new Area(0, 0, 40_000, 40_000);
        assertThat(Sheets.on(Paper.A4, List.of(leaf(panel, new Area(0, 0, 15_000, 20_000)))))
                .hasSize(1);
        assertThat(Sheets.on(Paper.A4, List.of(leaf(panel, panel)))).hasSizeGreaterThan(1);
    }

    /** 240 x 100 goes on one A4 that lies, on two that stand. */
    @Test
    void turnsThePaperWhereThatTakesFewer() {
        Area wide = new Area(0, 0, 24_000, 10_000);
        List<Sheet> sheets = Sheets.on(Paper.A4, List.of(leaf(wide, wide)));
        assertThat(sheets).singleElement().matches(s -> s.paper().equals(Paper.A4.turned()));
        Area high = new Area(0, 0, 10_000, 20_000);
        assertThat(Sheets.on(Paper.A4, List.of(leaf(high, high))))
                .singleElement()
                .matches(s -> s.paper().equals(Paper.A4));
    }

    /** All of what is needed is on some tile, and all marks of a sheet's frame, bars and words are on the paper. */
    @ParameterizedTest
    @ValueSource(ints = {9000, 17_000, 26_000, 41_000, 70_000})
    void staysOnThePaper(int size) {
        Area all = new Area(0, 0, size, size * 2 / 3);
        for (Paper paper : List.of(Paper.A4, Paper.A3, Paper.LETTER)) {
            for (Sheet sheet : Sheets.on(paper, List.of(leaf(all, all)))) {
                Area edge =
                        new Area(0, 0, sheet.paper().widthHmm(), sheet.paper().heightHmm());
                Area frame = sheet.paper().frame();
                for (Sheet.Placed layer : sheet.layers()) {
                    assertThat(edge.holds(layer.clip())).isTrue();
                    for (Mark mark : layer.marks()) {
                        if (mark instanceof Mark.Line bar && mark.layer() == Layer.BAR) {
                            assertThat(frame.holds(Area.between(bar.from(), bar.to())))
                                    .as(sheet.paper() + " " + bar)
                                    .isTrue();
                        }
                    }
                }
            }
        }
    }

    /** What tiles show too much is shared out before and after. */
    @Test
    void centresWhatIsSmallerThanItsTiles() {
        Tiling tiling = Tiling.centred(new Tiling.Reach(0, 100), List.of(), 160, 15);
        assertThat(tiling.startsHmm()).containsExactly(-30);
    }
}
