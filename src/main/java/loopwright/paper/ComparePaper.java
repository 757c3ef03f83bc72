package loopwright.paper;

import loopwright.answer.Comparison;

/** A way to write two builds side by side. */
public interface ComparePaper {

    /** Writes them. */
    void write(Comparison comparison);

    /** Says that one of them is not there, and why. */
    void nothing(String why);

    /** Says that the search was stopped before it could tell. */
    default void stopped(String why) {
        nothing(why);
    }
}
