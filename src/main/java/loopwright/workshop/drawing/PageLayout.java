package loopwright.workshop.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * What goes where on a sheet: title block and cautions below, check bars below and to the left of the drawing.
 *
 * <p>Frame and centring marks as ISO 5457 has them.
 */
record PageLayout(Paper paper) {

    /** Height that title block, cautions and bar take below the drawing. */
    static final int UNDER_HMM = 6250;

    /** Width that the upright bar takes beside the drawing. */
    static final int BESIDE_HMM = 700;

    /** From a line of words to the next. */
    static final int LINE_HMM = 440;

    /** From the title block up to the first caution. */
    private static final int CAUTIONS_HMM = 1500;

    private static final int CAUTION_LINE_HMM = 390;
    private static final int CENTRING_HMM = 500;

    /** Words keep clear of the centring marks. */
    private static final int WORDS_IN_HMM = 600;

    /** Where the drawing shows. */
    Area view() {
        Area frame = paper.frame();
        return new Area(frame.leftHmm() + BESIDE_HMM, frame.bottomHmm() + UNDER_HMM, frame.rightHmm(), frame.topHmm());
    }

    /** Where words go on a sheet of words. */
    Area words() {
        Area frame = paper.frame();
        return new Area(
                frame.leftHmm() + WORDS_IN_HMM,
                frame.bottomHmm() + TitleBlock.HEIGHT_HMM + CAUTIONS_HMM,
                frame.rightHmm(),
                frame.topHmm() - WORDS_IN_HMM);
    }

    /** Frame, centring marks and title block. */
    List<Mark> border(TitleBlock title, String sheet) {
        Area frame = paper.frame();
        List<Mark> out = new ArrayList<>();
        out.add(new Mark.Rounded(Layer.FRAME, frame, 0));
        Dot middle = frame.centre();
        int x = middle.xHmm();
        int y = middle.yHmm();
        mark(out, new Dot(x, frame.topHmm() - CENTRING_HMM), new Dot(x, paper.heightHmm() - CENTRING_HMM));
        mark(out, new Dot(x, CENTRING_HMM), new Dot(x, frame.bottomHmm()));
        mark(out, new Dot(CENTRING_HMM, y), new Dot(frame.leftHmm() + CENTRING_HMM, y));
        mark(out, new Dot(frame.rightHmm() - CENTRING_HMM, y), new Dot(paper.widthHmm() - CENTRING_HMM, y));
        out.addAll(title.marks(new Dot(frame.rightHmm(), frame.bottomHmm()), sheet));
        return out;
    }

    private static void mark(List<Mark> out, Dot from, Dot to) {
        out.add(new Mark.Line(Layer.FRAME, from, to));
    }

    /** The bars of a sheet with a drawing on it. */
    List<Mark> bars() {
        Area frame = paper.frame();
        Area view = view();
        List<Mark> out = new ArrayList<>();
        out.addAll(CheckBar.across(new Dot(view.leftHmm() + 500, view.bottomHmm() - 600)));
        out.addAll(CheckBar.up(new Dot(frame.leftHmm() + 350, uprightBarHmm(frame))));
        return out;
    }

    /** Above the centring mark where there is room, else so that the mark lies on one of the bar's ticks. */
    private static int uprightBarHmm(Area frame) {
        int above = frame.centre().yHmm() + CENTRING_HMM;
        int room = frame.topHmm() - CheckBar.LENGTH_HMM - CENTRING_HMM;
        return above <= room ? above : frame.centre().yHmm() - 2 * CheckBar.STEP_HMM;
    }

    /** Cautions, over the title block of every sheet. */
    List<Mark> cautions(List<String> cautions) {
        Area frame = paper.frame();
        List<Mark> out = new ArrayList<>();
        int y = frame.bottomHmm() + TitleBlock.HEIGHT_HMM + CAUTIONS_HMM;
        for (String caution : cautions) {
            out.add(new Mark.Text(Layer.WORDS, new Dot(frame.leftHmm() + 200, y), 180, Mark.Stand.STARTS, caution));
            y -= CAUTION_LINE_HMM;
        }
        return out;
    }
}
