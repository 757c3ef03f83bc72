package loopwright.loop;

/**
 * One radiator (or one section of it) in the heat balance.
 *
 * @param conductanceWPerK coolant mean to incoming air, W/K, at least 0
 * @param inletOverRoomK how much warmer than the room the air is that it breathes, K
 */
public record SectionRate(double conductanceWPerK, double inletOverRoomK) {

    /** Checks the range. */
    public SectionRate {
        if (!(conductanceWPerK >= 0 && Double.isFinite(conductanceWPerK))) {
            throw new IllegalArgumentException("conductance must be at least 0 W/K but was " + conductanceWPerK);
        }
        if (!Double.isFinite(inletOverRoomK)) {
            throw new IllegalArgumentException("inlet over room must be a number of K but was " + inletOverRoomK);
        }
    }
}
