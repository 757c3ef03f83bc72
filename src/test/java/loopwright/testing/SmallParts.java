package loopwright.testing;

import static loopwright.testing.Mm.mm;
import static loopwright.testing.Mm.size;
import static loopwright.testing.Mm.span;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Cover;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Memory;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.ScrewThread;
import loopwright.catalog.part.Supply;
import loopwright.catalog.part.Tube;
import loopwright.quantity.Dimension;

/** Invented parts, each with the few figures that a test cares about; lengths are exact unless given. */
public final class SmallParts {

    private static final Purchase BUY = new Purchase(1000, 3);

    /** Steps in which a fan's curve is given. */
    private static final int STEPS = 20;

    private SmallParts() {}

    /** A radiator without ports, as wide as its fans, 20 mm of tank at either end, 20 mm core of 16 fins an inch. */
    public static Radiator radiator(String id, String pattern, Dimension thickness) {
        Pattern fans = Pattern.parse(pattern);
        return new Radiator(
                id,
                id,
                Optional.empty(),
                BUY,
                fans,
                new Radiator.Body(
                        mm(fans.sizeMm()),
                        thickness,
                        mm(20),
                        mm(20),
                        new Radiator.Seat(ScrewThread.M3, mm(1.2), mm(4)),
                        700),
                new Radiator.Ports(List.of(), Radiator.Metal.COPPER),
                core(20, 16, 1, 120));
    }

    /** A core with the workshop's usual fins and tubes, 2.5 kPa at 4 L/min, and nothing measured. */
    public static Radiator.Core core(double depthMm, double finsPerInch, int tubeRows, double coolantML) {
        return new Radiator.Core(
                depthMm,
                finsPerInch,
                tubeRows,
                coolantML,
                List.of(new Block.LossPoint(0, 0), new Block.LossPoint(4, 2.5)),
                Optional.empty(),
                Optional.empty(),
                Radiator.Measured.NOTHING);
    }

    /** A fan of 1300 rpm. */
    public static Fan fan(String id, int sizeMm, Dimension thickness) {
        return fan(id, sizeMm, thickness, 1300);
    }

    /**
     * A fan of the trade's pressure curve, P = Pmax·(1 − (Q/Qmax)^1.5) with 117 m³/h and 28.3 Pa at 1850 rpm, at the full
     * speed given, by the fan laws.
     */
    public static Fan fan(String id, int sizeMm, Dimension thickness, double speedMaxRpm) {
        double share = speedMaxRpm / 1850;
        List<Fan.CurvePoint> curve = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double at = (double) i / STEPS;
            curve.add(new Fan.CurvePoint(at * 117 * share, 28.3 * share * share * (1 - StrictMath.pow(at, 1.5))));
        }
        return new Fan(
                id,
                id,
                Optional.empty(),
                BUY,
                new Fan.Frame(sizeMm, thickness, 150),
                new Fan.Air(speedMaxRpm, 20, curve, 25),
                new Fan.Electric(0.1, 0.2));
    }

    /** A raised cover over a row of fans, with walls of 2 mm and a skin of 2 mm. */
    public static Cover cover(String id, String pattern, double insideHeightMm, double skinFreeArea) {
        Pattern fans = Pattern.parse(pattern);
        return new Cover(
                id,
                id,
                Optional.empty(),
                BUY,
                new Cover.Body(
                        mm(fans.fans() * fans.sizeMm() + 8), mm(fans.sizeMm() + 8), mm(2), mm(insideHeightMm), mm(2)),
                new Cover.Skin(skinFreeArea, 0),
                new Cover.Fixing(4 * fans.fans(), ScrewThread.M3));
    }

    /** A supply. */
    public static Supply supply(String id, double lengthMm, double plugRoomMm, double ratedW) {
        return new Supply(
                id,
                id,
                Optional.empty(),
                BUY,
                Supply.SupplyForm.ATX,
                size(lengthMm, 150, 86),
                mm(plugRoomMm),
                new Supply.Output(ratedW, 1, 4, 1, 4, 25, List.of()));
    }

    /** A 2.5-inch drive of 3 W. */
    public static Drive drive(String id) {
        return new Drive(id, id, Optional.empty(), BUY, Drive.DriveForm.D2_5, size(100.2, 69.85, 7), mm(20), 3);
    }

    /** A kit of two modules. */
    public static Memory memory(String id, Dimension height) {
        return new Memory(id, id, Optional.empty(), BUY, "g1", height, 2, 32);
    }

    /** A card with a block, 30 mm thick, 40 mm high over the board. */
    public static GraphicsCard card(String id, Dimension length, double worstW) {
        return new GraphicsCard(
                id,
                id,
                Optional.empty(),
                BUY,
                GraphicsCard.Cooling.BLOCK,
                new GraphicsCard.Body(length, mm(10), mm(40), mm(0), mm(0)),
                new GraphicsCard.Power(worstW, worstW, 1, 0, Optional.of(flow())),
                100);
    }

    /** A processor. */
    public static Processor processor(String id, double worstW) {
        return new Processor(id, id, Optional.empty(), BUY, "s1", new Processor.Heat(worstW, worstW, 1), 100);
    }

    private static Block.Flow flow() {
        return new Block.Flow(
                List.of(new Block.LossPoint(2, 4), new Block.LossPoint(4, 14)), 0.05, Radiator.Metal.COPPER, 20);
    }

    /** What every machine has besides: a board of 20 W, a block, a combined pump of 15 W, tube and coolant. */
    public static List<Part> rest() {
        return List.of(
                new Board(
                        "board",
                        "board",
                        Optional.empty(),
                        BUY,
                        Board.BoardForm.MINI_ITX,
                        new Board.Sockets(
                                "s1",
                                mm(60),
                                mm(60),
                                new Board.MemoryBank(span(20, 150), span(130, 150), "g1", 2),
                                mm(155)),
                        List.of(),
                        new Board.Electric(20, 1, 4, 1, 3)),
                new Block("block", "block", Optional.empty(), BUY, List.of("s1"), size(40, 40, 15), mm(5), flow()),
                new Pump(
                        "pump",
                        "pump",
                        Optional.empty(),
                        BUY,
                        Pump.Kind.PUMP_RESERVOIR,
                        size(30, 30, 30),
                        new Pump.Water(List.of(new Pump.CurvePoint(0, 30), new Pump.CurvePoint(10, 0)), 150, mm(5)),
                        new Pump.Electric(15, 0, 20, 25)),
                new Tube("tube", "tube", Optional.empty(), BUY, Tube.Kind.SOFT, mm(10), mm(16), mm(40)),
                new Coolant(
                        "coolant",
                        "coolant",
                        Optional.empty(),
                        BUY,
                        Coolant.BaseLiquid.WATER,
                        Optional.empty(),
                        Optional.empty(),
                        true,
                        12));
    }
}
