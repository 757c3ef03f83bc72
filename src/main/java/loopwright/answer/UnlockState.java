package loopwright.answer;

/** What is known of a radiator class on a mount that nothing in the list unlocks. */
public enum UnlockState {
    /** Nothing unlocks it. */
    IMPOSSIBLE,
    /** Nobody can say until something is measured. */
    UNKNOWN,
    /** The search was stopped before it came there. */
    NOT_REACHED
}
