package loopwright.loop;

import java.util.Optional;

/** Whether a machine finds a steady state. */
public sealed interface SteadyState permits Steady, SteadyState.None {

    /**
     * It does not.
     *
     * @param why in a sentence that a builder can use
     */
    record None(String why) implements SteadyState {}

    /** The state, where there is one. */
    default Optional<Steady> found() {
        return this instanceof Steady steady ? Optional.of(steady) : Optional.empty();
    }
}
