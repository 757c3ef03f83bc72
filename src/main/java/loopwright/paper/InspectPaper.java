package loopwright.paper;

import loopwright.answer.InspectAnswer;

/** A way to write one build in full. */
public interface InspectPaper {

    /** Writes the build. */
    void write(InspectAnswer answer);

    /** Says that there is no such build, and why. */
    void nothing(String why);

    /** Says that the search was stopped before it could tell. */
    default void stopped(String why) {
        nothing(why);
    }
}
