package loopwright.rank;

import java.util.List;
import loopwright.loop.Machine;
import loopwright.loop.SoundPower;
import loopwright.loop.air.AirBranch;
import loopwright.loop.air.AirDirection;

/**
 * Real parts on one mount at work: which way they blow, how fast, through what.
 *
 * <p>A class, not a record: each is made once, and searches tell them apart by identity.
 */
final class Blowing {

    private final Fitting fitting;
    private final Machine.FanMount mount;
    private final AirBranch branch;
    private final Draught draught;
    private final Floor floor;

    /**
     * How loud it is.
     *
     * @param faster at the next duty up; at full duty the same
     */
    record Loudness(SoundPower now, SoundPower faster) {}

    Blowing(Fitting fitting, Machine.FanMount mount, AirBranch branch, Draught draught, Floor.Figures figures) {
        this.fitting = fitting;
        this.mount = mount;
        this.branch = branch;
        this.draught = draught;
        this.floor = Floor.of(() -> List.of(draught), figures);
    }

    Fitting fitting() {
        return fitting;
    }

    Machine.FanMount mount() {
        return mount;
    }

    AirBranch branch() {
        return branch;
    }

    Draught draught() {
        return draught;
    }

    /** What bounds it: itself. */
    Floor floor() {
        return floor;
    }

    boolean blowsOut() {
        return mount.direction() == AirDirection.OUT;
    }
}
