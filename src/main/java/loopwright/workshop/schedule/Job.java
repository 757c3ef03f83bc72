package loopwright.workshop.schedule;

/**
 * A piece of work as the solver sees it.
 *
 * @param steps of the hands, of {@link Clock#STEP_MIN} minutes; 0: nobody works
 * @param unbroken whether it has to be done within one day
 * @param fromStep the first step at which all it needs is there
 */
public record Job(String id, int steps, boolean unbroken, int fromStep) {

    /** The same, with what it needs there from another step on. */
    Job from(int step) {
        return new Job(id, steps, unbroken, step);
    }
}
