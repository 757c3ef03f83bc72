package loopwright.loop.air;

/** Which way a mount's fans blow. */
public enum AirDirection {
    /** From the room into the case. */
    IN,
    /** From the case into the room. */
    OUT;

    /** How much of the pressure inside helps the fans: −1 against them, 1 with them. */
    int help() {
        return this == OUT ? 1 : -1;
    }
}
