package loopwright.oracle.cases;

import static loopwright.oracle.cases.Dice.hmm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import loopwright.catalog.Catalog;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.basis.SizeMm;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Memory;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.Reservoir;
import loopwright.catalog.part.Supply;
import loopwright.quantity.Dimension;

/** Parts that the catalogue of a drawn case has besides: smaller, or not going together with the others, or not measured. */
final class WhyParts {
    private final SplittableRandom random;
    private final Catalog catalog;

    WhyParts(SplittableRandom random, Catalog catalog) {
        this.random = random;
        this.catalog = catalog;
    }

    private boolean chance(int percent) {
        return random.nextInt(100) < percent;
    }

    private Dimension maybe(int hmm) {
        return chance(12) ? Dimension.UNKNOWN : hmm(hmm);
    }

    /** Up to three of them, and perhaps one of the case's own made worse. */
    List<Part> drawn() {
        List<Part> all = new ArrayList<>(offered());
        pump().ifPresent(all::add);
        List<Part> out = new ArrayList<>();
        for (int count = random.nextInt(1, 4); count > 0; count--) {
            out.add(all.remove(random.nextInt(all.size())));
        }
        Drive drive = catalog.part(Drive.class, "drive-a");
        out.add(new Drive(
                "drive-b",
                "drive-b",
                Optional.empty(),
                CaseParts.BUY,
                drive.form(),
                drive.body(),
                hmm(chance(50) ? 900 : 100),
                2));
        if (chance(15)) {
            Memory was = catalog.part(Memory.class, "mem-a");
            out.add(new Memory(
                    was.id(), was.title(), was.variantOf(), was.buy(), "G2", was.heightMm(), was.modules(), 32));
        } else if (chance(15)) {
            GraphicsCard was = catalog.part(GraphicsCard.class, "card-a");
            out.add(new GraphicsCard(
                    was.id(),
                    was.title(),
                    was.variantOf(),
                    was.buy(),
                    was.cooling(),
                    was.body(),
                    new GraphicsCard.Power(100, 250, 1, chance(50) ? 1 : 0, Optional.empty()),
                    100));
        }
        return out;
    }

    private List<Part> offered() {
        return List.of(
                board(),
                new Processor(
                        "cpu-c", "cpu-c", Optional.empty(), CaseParts.BUY, "S1", new Processor.Heat(20, 30, 1), 10),
                new Memory(
                        "mem-b",
                        "mem-b",
                        Optional.empty(),
                        CaseParts.BUY,
                        chance(70) ? "G1" : "G2",
                        maybe(900),
                        chance(70) ? 2 : 4,
                        32),
                block(),
                card(),
                supply(),
                new Reservoir(
                        "res-b",
                        "res-b",
                        Optional.empty(),
                        CaseParts.BUY,
                        new SizeMm(maybe(1000), hmm(1000), hmm(1000)),
                        50,
                        hmm(200)),
                radiator(),
                radiator(),
                fan(),
                fan());
    }

    private Board board() {
        Board was = catalog.part(Board.class, "board-a");
        Board.Sockets s = was.sockets();
        Board.Sockets other = new Board.Sockets(
                chance(50) ? "S1" : "S2",
                s.processorLengthMm(),
                s.processorWidthMm(),
                new Board.MemoryBank(
                        s.memory().lengthMm(), s.memory().widthMm(), chance(60) ? "G1" : "G2", random.nextInt(1, 3)),
                hmm(random.nextInt(3000, 3700)));
        return new Board(
                "board-b",
                "board-b",
                Optional.empty(),
                CaseParts.BUY,
                was.form(),
                other,
                List.of(),
                new Board.Electric(20, 1, random.nextInt(3), random.nextInt(3), 3));
    }

    private Block block() {
        Block was = catalog.part(Block.class, "block-a");
        return new Block(
                "block-b",
                "block-b",
                Optional.empty(),
                CaseParts.BUY,
                chance(50) ? List.of("S1", "S2") : List.of("S2"),
                new SizeMm(hmm(1200), hmm(1200), maybe(800)),
                hmm(300),
                was.flow());
    }

    private GraphicsCard card() {
        GraphicsCard was = catalog.part(GraphicsCard.class, "card-a");
        return new GraphicsCard(
                "card-b",
                "card-b",
                Optional.empty(),
                CaseParts.BUY,
                was.cooling(),
                new GraphicsCard.Body(
                        hmm(random.nextInt(2500, 4500)), hmm(600), maybe(1800), hmm(chance(50) ? 0 : 300), hmm(900)),
                new GraphicsCard.Power(100, 150, 1, chance(30) ? 1 : 0, Optional.empty()),
                100);
    }

    private Supply supply() {
        return new Supply(
                "supply-c",
                "supply-c",
                Optional.empty(),
                CaseParts.BUY,
                chance(60) ? Supply.SupplyForm.SFX : Supply.SupplyForm.ATX,
                new SizeMm(maybe(1500), hmm(1500), hmm(1500)),
                hmm(300),
                new Supply.Output(
                        chance(70) ? 600 : 150,
                        1,
                        random.nextInt(2),
                        random.nextInt(2),
                        random.nextInt(4),
                        30,
                        List.of()));
    }

    private Optional<Pump> pump() {
        return catalog.all(Pump.class).stream()
                .findFirst()
                .map(p -> new Pump(
                        "pump-c",
                        "pump-c",
                        Optional.empty(),
                        CaseParts.BUY,
                        p.kind() == Pump.Kind.PUMP ? Pump.Kind.PUMP_RESERVOIR : Pump.Kind.PUMP,
                        new SizeMm(hmm(1500), hmm(1200), maybe(1200)),
                        p.water(),
                        p.electric()));
    }

    private Radiator radiator() {
        Radiator was = catalog.part(Radiator.class, "rad-a");
        Pattern pattern = chance(75) ? was.pattern() : new Pattern(1, 92);
        Radiator.Body b = was.body();
        int thinner = b.thicknessMm().valueHmm() - random.nextInt(1, 700);
        String id = "rad-x" + random.nextInt(2);
        return new Radiator(
                id,
                id,
                Optional.empty(),
                CaseParts.BUY,
                pattern,
                new Radiator.Body(
                        maybe(100 * pattern.sizeMm()),
                        hmm(thinner),
                        hmm(Math.max(0, b.portOverhangMm().valueHmm() - random.nextInt(-2, 9))),
                        hmm(Math.max(0, b.blankOverhangMm().valueHmm() - random.nextInt(-2, 9))),
                        b.seat(),
                        b.massG()),
                was.ports(),
                was.core());
    }

    private Fan fan() {
        Fan was = catalog.part(Fan.class, "fan-a");
        int size = chance(60) ? 80 : 92;
        String id = "fan-x" + size;
        return new Fan(
                id,
                id,
                Optional.empty(),
                CaseParts.BUY,
                new Fan.Frame(
                        size, maybe(1500 - random.nextInt(-4, 700)), was.frame().massG()),
                was.air(),
                was.electric());
    }
}
