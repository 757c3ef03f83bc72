package loopwright.workshop.drawing;

/**
 * A sheet of paper and the frame on it: 20 mm to the left for filing, 10 mm elsewhere, as ISO 5457 has it for A4 and A3.
 *
 * <p>Letter is no size of ISO 5457 (ANSI Y14.1 has it); it gets the same frame.
 */
public record Paper(String name, int widthHmm, int heightHmm) {

    /** 210 × 297. */
    public static final Paper A4 = new Paper("A4", 21_000, 29_700);

    /** 420 × 297, lying. */
    public static final Paper A3 = new Paper("A3", 42_000, 29_700);

    /** 8.5 × 11 in. */
    public static final Paper LETTER = new Paper("Letter", 21_590, 27_940);

    /** Margin for filing, left; ISO 5457. */
    public static final int FILING_HMM = 2000;

    /** The other margins; ISO 5457. */
    public static final int MARGIN_HMM = 1000;

    /** One sheet on which a drawing and what stands under it have room. */
    public static Paper holding(Area drawing) {
        int width = Math.max(A4.widthHmm, drawing.widthHmm() + FILING_HMM + MARGIN_HMM + PageLayout.BESIDE_HMM);
        int height = drawing.heightHmm() + 2 * MARGIN_HMM + PageLayout.UNDER_HMM;
        return new Paper("one sheet", width, Math.max(A4.heightHmm, height));
    }

    /** The same sheet the other way round. */
    public Paper turned() {
        return new Paper(name, /* widthHmm= */ heightHmm, /* heightHmm= */ widthHmm);
    }

    /** What the frame encloses. */
    public Area frame() {
        return new Area(FILING_HMM, MARGIN_HMM, widthHmm - MARGIN_HMM, heightHmm - MARGIN_HMM);
    }
}
