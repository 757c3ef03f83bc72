package loopwright.workshop.drawing;

/** What a mark is for. A machine that cuts takes {@link #CUT} and {@link #DRILL} and nothing else. */
public enum Layer {
    /** Edges that are cut through. */
    CUT(Pen.WIDE),
    /** Holes that are drilled. */
    DRILL(Pen.WIDE),
    /** The two edges that everything is measured from. */
    DATUM(Pen.WIDE),
    /** The flat part of the sheet. */
    PANEL(Pen.NARROW),
    /** Holes, slots and perforations that are there already. */
    EXISTING(Pen.HIDDEN),
    /** Where nothing may be cut: folds and clips. */
    KEEP_OUT(Pen.NARROW),
    /** What lies against the sheet: covers, frames of fans. */
    BESIDE(Pen.ADJACENT),
    /** Centre lines. */
    CENTRE(Pen.CENTRE),
    /** Dimensions. */
    DIMENSION(Pen.NARROW),
    /** Words and tables. */
    WORDS(Pen.NARROW),
    /** Bars that show whether the print is true. */
    BAR(Pen.WIDE),
    /** Marks by which tiles are joined. */
    REGISTER(Pen.NARROW),
    /** The frame of a sheet. */
    FRAME(Pen.BORDER);

    private final Pen pen;

    Layer(Pen pen) {
        this.pen = pen;
    }

    /** The line it is drawn with. */
    public Pen pen() {
        return pen;
    }
}
