package loopwright.loop;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.brief.LoopWish.BlockOrder;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.Tube;
import loopwright.loop.air.AirDirection;
import loopwright.loop.air.AirPath;

/**
 * A machine as the physics sees it: what moves air, what moves coolant, and where heat comes from.
 *
 * @param site where it stands
 * @param mounts those with fans, in the chassis's order
 * @param openings ways to the room without fans
 * @param water the loop
 * @param caseHeatW heat that stays in the case's air, besides what radiators bring in
 */
public record Machine(Site site, List<FanMount> mounts, List<Vent> openings, Water water, double caseHeatW) {

    /** Name of the block on the processor. */
    public static final String PROCESSOR = "processor block";

    /** Name of the block on the card. */
    public static final String CARD = "card block";

    /** Copies. */
    public Machine {
        mounts = List.copyOf(mounts);
        openings = List.copyOf(openings);
    }

    /** The room's temperature and the height over the sea. */
    public record Site(double roomC, double altitudeM) {}

    /**
     * A mount with fans.
     *
     * @param mount its id
     * @param radiator absent for a bare row of fans
     */
    public record FanMount(
            String mount, AirDirection direction, Fans fans, MountAir air, Optional<RadiatorAt> radiator) {

        /** The same parts blowing some way. */
        public FanMount blowing(AirDirection way) {
            return new FanMount(mount, way, fans, air, radiator);
        }

        /** The same parts at another duty. */
        public FanMount at(Duty duty) {
            return new FanMount(mount, direction, new Fans(fans.fan(), fans.row(), fans.layers(), duty), air, radiator);
        }
    }

    /** Equal fans: how many in a row, in how many layers, how fast. */
    public record Fans(Fan fan, int row, int layers, Duty duty) {}

    /** What is in the air's way at a mount, and the fans' face. */
    public record MountAir(AirPath path, AirPath.Face face) {}

    /**
     * A radiator on a mount.
     *
     * @param maskedShare share of its core that is covered
     * @param gapM2 area of the gap round it that nothing seals
     */
    public record RadiatorAt(Radiator radiator, double maskedShare, double gapM2) {}

    /**
     * A way to the room without fans: an empty mount, or all seams and slots together.
     *
     * @param air absent for a plain gap
     * @param gapM2 area of a plain gap
     */
    public record Vent(String name, Optional<MountAir> air, double gapM2) {}

    /**
     * The loop.
     *
     * @param blocks in loop order
     * @param order whether the coolant passes the blocks one after the other
     */
    public record Water(PumpAt pump, Coolant coolant, Runs runs, List<BlockAt> blocks, BlockOrder order) {
        /** Copies. */
        public Water {
            blocks = List.copyOf(blocks);
        }
    }

    /** A pump at a duty. */
    public record PumpAt(Pump pump, Duty duty) {

        /** Share of its full speed, dimensionless. */
        public double speedShare() {
            return duty.speedShare(pump.electric().dutyMinPercent());
        }

        /** Its heat in the coolant, W: with the cube of its speed, as its power. */
        public double heatW() {
            double speed = speedShare();
            return pump.electric().heatToCoolantW() * speed * speed * speed;
        }
    }

    /**
     * The tube and how much of it there is.
     *
     * @param planned what the runs turn through, once they are planned; absent, elbows are reckoned by the part
     */
    public record Runs(Tube tube, double lengthM, Optional<Turns> planned) {

        /** Runs that are not planned yet. */
        public Runs(Tube tube, double lengthM) {
            this(tube, lengthM, Optional.empty());
        }
    }

    /**
     * How many fittings and bends the runs have.
     *
     * @param passing names of pump, blocks and radiators as the coolant passes them
     */
    public record Turns(int straights, int elbows, int bends, List<String> passing) {
        /** Copies. */
        public Turns {
            passing = List.copyOf(passing);
        }
    }

    /**
     * A block at work.
     *
     * @param name whose heat it takes
     * @param part id of that part
     */
    public record BlockAt(String name, String part, Block.Flow flow, double heatW) {}

    /** The same machine in another room. */
    public Machine inRoom(double roomC) {
        return new Machine(new Site(roomC, site.altitudeM()), mounts, openings, water, caseHeatW);
    }
}
