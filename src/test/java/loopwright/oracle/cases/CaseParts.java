package loopwright.oracle.cases;

import static loopwright.oracle.cases.Dice.hmm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import loopwright.catalog.Catalog;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.basis.SizeMm;
import loopwright.catalog.basis.Span;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Cover;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Memory;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.Reservoir;
import loopwright.catalog.part.ScrewThread;
import loopwright.catalog.part.Supply;
import loopwright.catalog.standard.Practice;
import loopwright.catalog.standard.Standards;
import loopwright.testing.SmallParts;
import loopwright.testing.SmallPractice;

/** Invented parts of a case, small numbers, near the places where hundredths decide. */
final class CaseParts {
    static final Purchase BUY = new Purchase(1000, 3);

    final Dice dice;
    final List<Part> all = new ArrayList<>();
    final int fanNeedHmm;
    final int portRoomHmm;
    final int plenumHmm = 300;
    int driveCount;

    CaseParts(Dice dice) {
        this.dice = dice;
        this.fanNeedHmm = dice.chance(70) ? dice.small(1, 9) : 0;
        this.portRoomHmm = dice.oneOf(List.of(300, 900, 1500));
    }

    Radiator radiator(String id, Pattern pattern, int widthHmm, int thicknessHmm, int portHmm, int blankHmm) {
        List<Radiator.Port> ports = new ArrayList<>();
        int count = dice.between(0, 2);
        for (int i = 0; i < count; i++) {
            boolean broad = dice.chance(85);
            ports.add(new Radiator.Port(
                    broad ? Radiator.PortFace.BROAD : Radiator.PortFace.END,
                    hmm(portHmm / 2),
                    dice.dim(i == 0 ? 2000 : -2000, "port")));
        }
        Radiator radiator = new Radiator(
                id,
                id,
                Optional.empty(),
                BUY,
                pattern,
                new Radiator.Body(
                        dice.dim(widthHmm, id + "-width"),
                        hmm(thicknessHmm),
                        dice.dim(portHmm, id + "-overhang"),
                        hmm(blankHmm),
                        new Radiator.Seat(ScrewThread.M3, hmm(120), hmm(300)),
                        500),
                new Radiator.Ports(List.copyOf(ports), Radiator.Metal.COPPER),
                SmallParts.core(16, 16, 1, 100));
        all.add(radiator);
        return radiator;
    }

    Fan fan(String id, int sizeMm, int thicknessHmm) {
        Fan fan = new Fan(
                id,
                id,
                Optional.empty(),
                BUY,
                new Fan.Frame(sizeMm, dice.dim(thicknessHmm, id), 100),
                new Fan.Air(2000, 20, List.of(new Fan.CurvePoint(0, 30), new Fan.CurvePoint(80, 0)), 25),
                new Fan.Electric(0.2, 0.3));
        all.add(fan);
        return fan;
    }

    Cover cover(String id, int lengthHmm, int widthHmm, int insideHmm, double freeArea) {
        Cover cover = new Cover(
                id,
                id,
                Optional.empty(),
                BUY,
                new Cover.Body(hmm(lengthHmm), hmm(widthHmm), hmm(200), dice.dim(insideHmm, "cover"), hmm(100)),
                new Cover.Skin(freeArea, 50),
                new Cover.Fixing(6, ScrewThread.M3));
        all.add(cover);
        return cover;
    }

    /** Everything that is neither radiator, fan nor cover. */
    void rest() {
        boolean zone = dice.chance(50);
        all.add(new Board(
                "board-a",
                "board-a",
                Optional.empty(),
                BUY,
                Board.BoardForm.MINI_ITX,
                new Board.Sockets(
                        "S1",
                        hmm(1500),
                        hmm(2000),
                        new Board.MemoryBank(span(2600, 3000), span(500, 4500), "G1", 2),
                        hmm(3600)),
                zone
                        ? List.of(new Board.Zone("plug", span(0, 300), span(0, 900), span(0, 1200), dice.chance(50)))
                        : List.of(),
                new Board.Electric(20, 1, 2, 1, 3)));
        all.add(new Processor("cpu-a", "cpu-a", Optional.empty(), BUY, "S1", new Processor.Heat(60, 80, 1), 100));
        all.add(new Processor("cpu-b", "cpu-b", Optional.empty(), BUY, "S2", new Processor.Heat(60, 80, 1), 100));
        all.add(new Memory("mem-a", "mem-a", Optional.empty(), BUY, "G1", dice.dim(2000, "memory"), 2, 32));
        all.add(new Block(
                "block-a",
                "block-a",
                Optional.empty(),
                BUY,
                List.of("S1"),
                new SizeMm(hmm(1600), hmm(1600), dice.dim(1500, "block")),
                hmm(400),
                new Block.Flow(
                        List.of(new Block.LossPoint(1, 1), new Block.LossPoint(4, 9)),
                        0.1,
                        Radiator.Metal.COPPER,
                        20)));
        all.add(new GraphicsCard(
                "card-a",
                "card-a",
                Optional.empty(),
                BUY,
                GraphicsCard.Cooling.AIR,
                new GraphicsCard.Body(
                        hmm(4500), hmm(600), dice.dim(2400, "card"), hmm(dice.oneOf(List.of(0, 300))), hmm(900)),
                new GraphicsCard.Power(100, 150, 1, 0, Optional.empty()),
                100));
        supply("supply-a", 3000, 500, 400);
        if (dice.chance(50)) {
            supply("supply-b", 2500 + dice.small(-5, 5), 500, dice.oneOf(List.of(200, 400)));
        }
        driveCount = dice.between(0, 2);
        all.add(new Drive(
                "drive-a",
                "drive-a",
                Optional.empty(),
                BUY,
                Drive.DriveForm.D2_5,
                new SizeMm(hmm(2500), hmm(2000), hmm(700)),
                dice.dim(300, "drive"),
                2));
        all.add(new Drive(
                "drive-m",
                "drive-m",
                Optional.empty(),
                BUY,
                Drive.DriveForm.M2,
                new SizeMm(hmm(800), hmm(200), hmm(30)),
                hmm(0),
                3));
        if (dice.chance(60)) {
            pump("pump-a", Pump.Kind.PUMP_RESERVOIR);
        }
        if (dice.chance(60) || all.get(all.size() - 1) instanceof Drive) {
            pump("pump-b", Pump.Kind.PUMP);
        }
        all.add(new Reservoir(
                "res-a", "res-a", Optional.empty(), BUY, new SizeMm(hmm(2000), hmm(1500), hmm(1500)), 100, hmm(200)));
    }

    private void supply(String id, int lengthHmm, int roomHmm, double ratedW) {
        all.add(new Supply(
                id,
                id,
                Optional.empty(),
                BUY,
                Supply.SupplyForm.SFX,
                new SizeMm(dice.dim(lengthHmm, id), hmm(2000), hmm(2000)),
                hmm(roomHmm),
                new Supply.Output(ratedW, 1, 1, 0, 2, 30, List.of())));
    }

    private void pump(String id, Pump.Kind kind) {
        all.add(new Pump(
                id,
                id,
                Optional.empty(),
                BUY,
                kind,
                new SizeMm(hmm(2200), hmm(1500), hmm(1500)),
                new Pump.Water(List.of(new Pump.CurvePoint(0, 30), new Pump.CurvePoint(10, 0)), 20, hmm(250)),
                new Pump.Electric(15, 8, 20, 30)));
    }

    Catalog catalog(Part chassis) {
        TreeMap<String, Part> parts = new TreeMap<>();
        all.forEach(p -> parts.put(p.id(), p));
        parts.put(chassis.id(), chassis);
        return new Catalog("generated", "EUR", parts, standards(), practice());
    }

    private static Standards standards() {
        List<Standards.FanPattern> fans = Pattern.SIZES_MM.stream()
                .map(s -> new Standards.FanPattern(s, hmm(s * 90), hmm(s * 100 - 400), "invented"))
                .toList();
        return new Standards(
                List.of(new Standards.BoardOutline(
                        Board.BoardForm.MINI_ITX, hmm(4800), hmm(5000), List.of(), "invented")),
                List.of(),
                List.of(),
                fans,
                List.of());
    }

    private Practice practice() {
        return new Practice(
                new Practice.Room(
                        hmm(fanNeedHmm),
                        hmm(portRoomHmm),
                        hmm(300),
                        hmm(plenumHmm),
                        hmm(plenumHmm + 500),
                        hmm(100),
                        hmm(160)),
                SmallPractice.air(hmm(1000), 0.4),
                SmallPractice.heat(20),
                SmallPractice.loop(),
                SmallPractice.core());
    }

    static Span span(int from, int to) {
        return new Span(hmm(from), hmm(to));
    }
}
