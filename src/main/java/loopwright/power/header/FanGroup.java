package loopwright.power.header;

import loopwright.catalog.part.Fan;

/**
 * Equal fans of one mount.
 *
 * @param name the mount
 * @param steadyMilliA of one fan at full speed
 * @param startMilliA of one fan while it starts
 */
public record FanGroup(String name, String fan, int count, int steadyMilliA, int startMilliA) {

    /** Fans of a kind; one that does not say its start current starts at a factor of its current. */
    public static FanGroup of(String name, Fan fan, int count, double startFactor) {
        Fan.Electric electric = fan.electric();
        return new FanGroup(
                name,
                fan.id(),
                count,
                MilliAmps.of(electric.currentA()),
                MilliAmps.starting(electric.startCurrentA(), electric.currentA(), startFactor));
    }
}
