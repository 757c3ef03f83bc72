package loopwright.workshop.schedule;

/** A working day in which something cannot be done that has to be done in one go: no schedule holds the build. */
public final class DayTooShortException extends RuntimeException {

    private static final long serialVersionUID = 1;

    DayTooShortException(String message) {
        super(message);
    }
}
