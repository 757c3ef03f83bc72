package loopwright.power;

import java.util.List;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
import loopwright.catalog.standard.Practice;

/**
 * The parts of a machine that draw power.
 *
 * @param drives all of them, on the board too
 */
public record LoadParts(Processor processor, GraphicsCard card, Board board, Pump pump, List<Drive> drives) {

    /** Milliwatts in a watt. */
    private static final double MILLI = 1000;

    private static final double PERCENT = 100;

    /** Copies the list. */
    public LoadParts {
        drives = List.copyOf(drives);
    }

    /** What the machine is doing. */
    public enum State {
        /** Nothing to do. */
        IDLE,
        /** At its usual work. */
        WORK,
        /** At worst: what a supply is chosen for. */
        WORST
    }

    /** Everything at worst, mW, by the same loads as a supply's need. */
    public long worstMilliW(Practice practice) {
        return sum(State.WORST, practice);
    }

    /** The budget of a state. */
    public RailBudget budget(State state, Practice practice) {
        return RailBudget.of(sum(state, practice), drives, practice);
    }

    private long sum(State state, Practice practice) {
        long sum = Load.milliwatts(processorW(state, practice))
                + Load.milliwatts(cardW(state, practice))
                + Load.milliwatts(board.electric().heatW() * boardShare(state, practice))
                + Load.of(pump).milliwatts()
                + Load.ofSmallParts(practice.heat()).milliwatts();
        for (Drive drive : drives) {
            sum += Load.milliwatts(driveW(drive, state));
        }
        return sum;
    }

    private double processorW(State state, Practice practice) {
        return switch (state) {
            case IDLE ->
                processor
                        .electric()
                        .map(Processor.Electric::idleW)
                        .orElse(idle(processor.heat().worstW(), practice));
            case WORK -> processor.heat().workW();
            case WORST -> processor.heat().worstW();
        };
    }

    private double cardW(State state, Practice practice) {
        return switch (state) {
            case IDLE ->
                card.electric()
                        .map(GraphicsCard.Electric::idleW)
                        .orElse(idle(card.power().worstW(), practice));
            case WORK -> card.power().workW();
            case WORST -> card.power().worstW();
        };
    }

    private static double driveW(Drive drive, State state) {
        return state == State.IDLE ? drive.electric().map(Drive.Electric::idleW).orElse(drive.heatW()) : drive.heatW();
    }

    private static double boardShare(State state, Practice practice) {
        return state == State.IDLE ? practice.plannedElectric().draw().idlePercent() / PERCENT : 1;
    }

    private static double idle(double worstW, Practice practice) {
        return worstW * practice.plannedElectric().draw().idlePercent() / PERCENT;
    }

    /** The burst that a supply has to stand. */
    public Surge surge(Practice practice) {
        long rest = worstMilliW(practice)
                - Load.of(processor).milliwatts()
                - Load.of(card).milliwatts();
        return new Surge(
                Surge.cardScaled(card, practice),
                Surge.processorScaled(processor, practice),
                Math.multiplyExact(rest, (long) PERCENT));
    }

    /** Watts of a whole number of milliwatts. */
    public static double watts(long milliwatts) {
        return milliwatts / MILLI;
    }
}
