package loopwright.fit.rules;

import java.util.List;
import java.util.Set;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Board.BoardForm;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.Drive.DriveForm;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Memory;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Supply;

/** Which parts go together, besides the load that the supply carries. */
public final class PartRules {

    private PartRules() {}

    /** The processor's socket is the board's. */
    public record ProcessorFitsBoard() implements PartRule.TupleRule {
        @Override
        public String id() {
            return "parts.processor-socket";
        }

        @Override
        public String statement() {
            return "the processor has the board's socket";
        }

        @Override
        public List<Role> roles() {
            return List.of(Role.BOARD, Role.PROCESSOR);
        }

        @Override
        public boolean allows(Chosen parts) {
            return parts.the(Role.BOARD, Board.class)
                    .sockets()
                    .processorSocket()
                    .equals(parts.the(Role.PROCESSOR, Processor.class).socket());
        }
    }

    /** The block is made for the processor's socket. */
    public record BlockFitsProcessor() implements PartRule.TupleRule {
        @Override
        public String id() {
            return "parts.block-socket";
        }

        @Override
        public String statement() {
            return "the processor block is made for the processor's socket";
        }

        @Override
        public List<Role> roles() {
            return List.of(Role.PROCESSOR, Role.BLOCK);
        }

        @Override
        public boolean allows(Chosen parts) {
            return parts.the(Role.BLOCK, Block.class)
                    .sockets()
                    .contains(parts.the(Role.PROCESSOR, Processor.class).socket());
        }
    }

    /** The memory is of the board's generation and has no more modules than it has sockets. */
    public record MemoryFitsBoard() implements PartRule.TupleRule {
        @Override
        public String id() {
            return "parts.memory";
        }

        @Override
        public String statement() {
            return "the memory is of the board's generation and fits its sockets";
        }

        @Override
        public List<Role> roles() {
            return List.of(Role.BOARD, Role.MEMORY);
        }

        @Override
        public boolean allows(Chosen parts) {
            Board.MemoryBank bank = parts.the(Role.BOARD, Board.class).sockets().memory();
            Memory memory = parts.the(Role.MEMORY, Memory.class);
            return bank.generation().equals(memory.generation()) && memory.modules() <= bank.sockets();
        }
    }

    /** The board's form is one the chassis takes. */
    public record BoardFitsBay(Set<BoardForm> forms) implements PartRule.TupleRule {
        @Override
        public String id() {
            return "parts.board-form";
        }

        @Override
        public String statement() {
            return "the chassis takes boards of the forms " + forms;
        }

        @Override
        public List<Role> roles() {
            return List.of(Role.BOARD);
        }

        @Override
        public boolean allows(Chosen parts) {
            return forms.contains(parts.the(Role.BOARD, Board.class).form());
        }
    }

    /** The board has sockets for the drives. */
    public record BoardTakesDrives(List<Drive> drives) implements PartRule.TupleRule {
        @Override
        public String id() {
            return "parts.drive-ports";
        }

        @Override
        public String statement() {
            return "the board has ports for " + drives.size() + " drives";
        }

        @Override
        public List<Role> roles() {
            return List.of(Role.BOARD);
        }

        @Override
        public boolean allows(Chosen parts) {
            Board.Electric electric = parts.the(Role.BOARD, Board.class).electric();
            long onBoard = drives.stream().filter(d -> d.form() == DriveForm.M2).count();
            return electric.m2Sockets() >= onBoard && electric.sataPorts() >= drives.size() - onBoard;
        }
    }

    /** The supply has the processor's plugs. */
    public record SupplyFeedsProcessor() implements PartRule.TupleRule {
        @Override
        public String id() {
            return "electric.processor-plugs";
        }

        @Override
        public String statement() {
            return "the supply has as many processor plugs as the processor wants";
        }

        @Override
        public List<Role> roles() {
            return List.of(Role.PROCESSOR, Role.SUPPLY);
        }

        @Override
        public boolean allows(Chosen parts) {
            return parts.the(Role.SUPPLY, Supply.class).output().processorPlugs()
                    >= parts.the(Role.PROCESSOR, Processor.class).heat().processorPlugs();
        }
    }

    /** The supply has the card's plugs. */
    public record SupplyFeedsCard() implements PartRule.TupleRule {
        @Override
        public String id() {
            return "electric.card-plugs";
        }

        @Override
        public String statement() {
            return "the supply has as many 8-pin (6 + 2) and 16-pin card plugs as the card wants";
        }

        @Override
        public List<Role> roles() {
            return List.of(Role.CARD, Role.SUPPLY);
        }

        @Override
        public boolean allows(Chosen parts) {
            Supply.Output output = parts.the(Role.SUPPLY, Supply.class).output();
            GraphicsCard.Power power = parts.the(Role.CARD, GraphicsCard.class).power();
            int sixPin = parts.the(Role.CARD, GraphicsCard.class)
                    .electric()
                    .map(GraphicsCard.Electric::sixPinPlugs)
                    .orElse(0);
            return output.cardEightPinPlugs() >= power.eightPinPlugs() + sixPin
                    && output.cardSixteenPinPlugs() >= power.sixteenPinPlugs();
        }
    }

    /** The supply has a plug for each drive that is not on the board. */
    public record SupplyFeedsDrives(int drives) implements PartRule.TupleRule {
        @Override
        public String id() {
            return "electric.drive-plugs";
        }

        @Override
        public String statement() {
            return "the supply has at least " + drives + " SATA plugs";
        }

        @Override
        public List<Role> roles() {
            return List.of(Role.SUPPLY);
        }

        @Override
        public boolean allows(Chosen parts) {
            return parts.the(Role.SUPPLY, Supply.class).output().sataPlugs() >= drives;
        }
    }

    /** A pump without a reservoir gets one; a pump with its own does not. */
    public record ReservoirWithPump() implements PartRule.TupleRule {
        @Override
        public String id() {
            return "parts.reservoir";
        }

        @Override
        public String statement() {
            return "a pump without a reservoir of its own gets one";
        }

        @Override
        public List<Role> roles() {
            return List.of(Role.PUMP, Role.RESERVOIR);
        }

        @Override
        public boolean allows(Chosen parts) {
            boolean alone = parts.the(Role.PUMP, Pump.class).kind() == Pump.Kind.PUMP;
            return alone == parts.parts().containsKey(Role.RESERVOIR);
        }
    }
}
