package loopwright.fit.rules;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Plug;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Supply;
import loopwright.power.Load;
import loopwright.power.LoadParts;

/** What single plugs and the lower rails bring, besides how many plugs there are ({@link PartRules}). */
public final class PlugRules {

    private PlugRules() {}

    /** The supply's 5 V and 3.3 V carry what is on them. */
    public record SupplyCarriesLow(int lowMilliW) implements PartRule.TupleRule {
        @Override
        public String id() {
            return "electric.low-rails";
        }

        @Override
        public String statement() {
            return String.format(
                    Locale.ROOT, "the supply brings %.1f W on 5 V and 3.3 V together", LoadParts.watts(lowMilliW));
        }

        @Override
        public List<Role> roles() {
            return List.of(Role.SUPPLY);
        }

        @Override
        public boolean allows(Chosen parts) {
            return parts.the(Role.SUPPLY, Supply.class)
                    .rails()
                    .map(r -> Load.milliwatts(r.lowW()) >= lowMilliW)
                    .orElse(true);
        }
    }

    /** The board has the processor's plugs. */
    public record BoardFeedsProcessor() implements PartRule.TupleRule {
        @Override
        public String id() {
            return "electric.board-processor-plugs";
        }

        @Override
        public String statement() {
            return "the board has as many processor plugs as the processor wants";
        }

        @Override
        public List<Role> roles() {
            return List.of(Role.BOARD, Role.PROCESSOR);
        }

        @Override
        public boolean allows(Chosen parts) {
            return parts.the(Role.BOARD, Board.class).electric().processorPlugs()
                    >= parts.the(Role.PROCESSOR, Processor.class).heat().processorPlugs();
        }
    }

    /** The supply's 16-pin plug is coded for what the card must have. */
    public record SupplyCodesCard() implements PartRule.TupleRule {
        @Override
        public String id() {
            return "electric.card-coding";
        }

        @Override
        public String statement() {
            return "the supply's 16-pin plug is coded for at least what the card's must be";
        }

        @Override
        public List<Role> roles() {
            return List.of(Role.CARD, Role.SUPPLY);
        }

        @Override
        public boolean allows(Chosen parts) {
            GraphicsCard card = parts.the(Role.CARD, GraphicsCard.class);
            Optional<Integer> wanted = card.electric().flatMap(GraphicsCard.Electric::sixteenPinW);
            Optional<Integer> there =
                    parts.the(Role.SUPPLY, Supply.class).rails().flatMap(Supply.Rails::sixteenPinW);
            return card.power().sixteenPinPlugs() == 0
                    || wanted.isEmpty()
                    || there.isEmpty()
                    || there.get() >= wanted.get();
        }
    }

    /**
     * Each 8-pin plug of a card that draws much hangs on a cable of its own. Common practice, no source.
     *
     * @param aboveMilliW draw above which that is asked, milliwatts
     */
    public record CardCablesAreOwn(int aboveMilliW) implements PartRule.TupleRule {
        @Override
        public String id() {
            return "electric.card-cables";
        }

        @Override
        public String statement() {
            return String.format(
                    Locale.ROOT,
                    "a card over %.0f W gets each of its 8-pin plugs from a cable of its own",
                    LoadParts.watts(aboveMilliW));
        }

        @Override
        public List<Role> roles() {
            return List.of(Role.CARD, Role.SUPPLY);
        }

        @Override
        public boolean allows(Chosen parts) {
            GraphicsCard card = parts.the(Role.CARD, GraphicsCard.class);
            Supply supply = parts.the(Role.SUPPLY, Supply.class);
            return supply.cables().isEmpty()
                    || Load.of(card).milliwatts() <= aboveMilliW
                    || cables(supply) >= card.power().eightPinPlugs();
        }

        /** Cables with at least one 8-pin plug for a card. */
        public static long cables(Supply supply) {
            return supply.cables().stream().filter(c -> c.plug() == Plug.CARD_8).count();
        }
    }
}
