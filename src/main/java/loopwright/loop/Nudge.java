package loopwright.loop;

/**
 * Which uncertain input of a model is one standard deviation above its value; every other has its value.
 *
 * <p>An input is told by its name, so that two machines that share a fan, a radiator or a correlation share what is uncertain
 * about it.
 */
@FunctionalInterface
public interface Nudge {

    /** Nothing is off. */
    Nudge NONE = (input, sigma) -> 1;

    /**
     * The factor on an input.
     *
     * @param input its name
     * @param sigma its relative standard uncertainty
     * @return 1, or 1 + sigma if this is the input
     */
    double factor(String input, double sigma);

    /** The nudge of one input. */
    static Nudge of(String nudged) {
        return (input, sigma) -> input.equals(nudged) ? 1 + sigma : 1;
    }
}
