package loopwright.answer.measure;

/**
 * How many layouts hang on a dimension: their fit changes when it alone is off by its ± one way or the other.
 *
 * @param die that fit as it is
 * @param comeAlive that do not
 * @param exact whether every layout was looked for anew; else no more than these can die, and nobody looked for new ones
 */
public record Hang(int die, int comeAlive, boolean exact) {

    /** All of them. */
    public int layouts() {
        return die + comeAlive;
    }
}
