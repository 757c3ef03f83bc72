package loopwright.geometry;

/** From where to where a box reaches along one axis; the lower end is always {@code from}. */
public record Edges(Sum from, Sum to) {

    /** Puts the lower end first: an end that is unknown counts as 0, which may lie beyond the other. */
    public Edges {
        if (from.valueHmm() > to.valueHmm()) {
            Sum low = to;
            to = from;
            from = low;
        }
    }
}
