package loopwright.workshop.drawing;

import java.util.List;

/**
 * Lines as ISO 128-2 has them: wide to narrow 2 : 1, line group 0.5.
 *
 * <p>Lengths of dashes and gaps follow its rules: dash 12 d, long dash 24 d, gap 3 d, dot at most 0.5 d.
 */
public enum Pen {
    /** 01.2: continuous wide. */
    WIDE(50, List.of()),
    /** 01.1: continuous narrow. */
    NARROW(25, List.of()),
    /** 02.1: dashed narrow, for what is hidden. */
    HIDDEN(25, List.of(300, 75)),
    /** 04.1: long-dashed dotted narrow, for centre lines. */
    CENTRE(25, List.of(600, 75, 12, 75)),
    /** 05.1: long-dashed double-dotted narrow, for the outlines of adjacent parts. */
    ADJACENT(25, List.of(600, 75, 12, 75, 12, 75)),
    /** The frame of a sheet, ISO 5457: 0.7. */
    BORDER(70, List.of());

    private final int widthHmm;
    private final List<Integer> dashesHmm;

    Pen(int widthHmm, List<Integer> dashesHmm) {
        this.widthHmm = widthHmm;
        this.dashesHmm = dashesHmm;
    }

    /** How wide it draws. */
    public int widthHmm() {
        return widthHmm;
    }

    /** Lengths of dashes and gaps in turn; none for a continuous line. */
    public List<Integer> dashesHmm() {
        return dashesHmm;
    }
}
