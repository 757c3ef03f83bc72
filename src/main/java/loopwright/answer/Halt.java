package loopwright.answer;

import java.util.Optional;

/** Asked now and then whether to stop, and why. */
public interface Halt {

    /** Never stops. */
    Halt NEVER = Optional::empty;

    /** The reason to stop now, if there is one. */
    Optional<String> because();
}
