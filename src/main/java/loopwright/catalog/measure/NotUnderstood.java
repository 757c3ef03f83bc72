package loopwright.catalog.measure;

/** An assumption that cannot be made; the message says which and why, in one line. */
public final class NotUnderstood extends RuntimeException {

    private static final long serialVersionUID = 1;

    NotUnderstood(String message) {
        super(message);
    }
}
