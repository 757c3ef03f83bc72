package loopwright.answer.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Memory;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Supply;
import loopwright.fit.FitCase;
import loopwright.fit.PartRuleList;
import loopwright.fit.rules.Chosen;
import loopwright.fit.rules.PartRule;
import loopwright.fit.rules.Role;
import loopwright.power.Load;
import loopwright.power.LoadSum;

/** Why parts do not go together, with the parts' own numbers. */
final class PartRuleWords {

    private static final double MILLI = 1000;
    private static final double PERCENT = 100;

    private final FitCase fitCase;

    PartRuleWords(FitCase fitCase) {
        this.fitCase = fitCase;
    }

    /** The rule with what the parts have. */
    String sentence(String rule, Chosen parts) {
        String statement = PartRuleList.of(fitCase).stream()
                .filter(r -> r.id().equals(rule))
                .map(PartRule::statement)
                .findFirst()
                .orElse(rule);
        return statement + ": " + figures(rule, parts) + new SupplyCure(fitCase).words(rule, parts);
    }

    private String figures(String rule, Chosen parts) {
        Board board = parts.the(Role.BOARD, Board.class);
        Processor processor = parts.the(Role.PROCESSOR, Processor.class);
        GraphicsCard card = parts.the(Role.CARD, GraphicsCard.class);
        Supply supply = parts.the(Role.SUPPLY, Supply.class);
        Memory memory = parts.the(Role.MEMORY, Memory.class);
        return switch (rule) {
            case "parts.processor-socket" ->
                processor.id() + " has " + processor.socket() + ", " + board.id() + " "
                        + board.sockets().processorSocket();
            case "parts.block-socket" -> name(Role.BLOCK, parts) + " is not made for " + processor.socket();
            case "parts.memory" ->
                memory.id() + " is " + memory.generation() + " in " + memory.modules() + ", " + board.id() + " takes "
                        + board.sockets().memory().generation() + " in "
                        + board.sockets().memory().sockets();
            case "parts.board-form" ->
                board.id() + " is "
                        + board.form().toString().toLowerCase(Locale.ROOT).replace('_', '-');
            case "parts.drive-ports" ->
                board.id() + " has " + board.electric().m2Sockets() + " M.2 and "
                        + board.electric().sataPorts() + " SATA";
            case "electric.processor-plugs" ->
                processor.id() + " wants " + processor.heat().processorPlugs() + ", " + supply.id() + " has "
                        + supply.output().processorPlugs();
            case "electric.card-plugs" ->
                card.id() + " wants "
                        + (card.power().eightPinPlugs()
                                + card.electric()
                                        .map(GraphicsCard.Electric::sixPinPlugs)
                                        .orElse(0))
                        + " and "
                        + card.power().sixteenPinPlugs() + ", " + supply.id() + " has "
                        + supply.output().cardEightPinPlugs() + " and "
                        + supply.output().cardSixteenPinPlugs();
            case "electric.drive-plugs" ->
                supply.id() + " has " + supply.output().sataPlugs();
            case "electric.load" -> load(parts, supply);
            case "electric.board-processor-plugs" ->
                processor.id() + " wants " + processor.heat().processorPlugs() + ", " + board.id() + " has "
                        + board.electric().processorPlugs();
            case "electric.twelve-volt",
                    "electric.low-rails",
                    "electric.surge",
                    "electric.surge-reserve",
                    "electric.card-coding",
                    "electric.card-cables" -> new SupplyWords(fitCase).figures(rule, parts);
            default -> parts.parts().values().stream().map(Part::id).collect(Collectors.joining(", "));
        };
    }

    private static String name(Role role, Chosen parts) {
        return parts.parts().entrySet().stream()
                .filter(e -> e.getKey() == role)
                .map(e -> e.getValue().id())
                .findFirst()
                .orElse("");
    }

    private String load(Chosen parts, Supply supply) {
        List<Load> loads = new ArrayList<>();
        loads.add(Load.of(parts.the(Role.PROCESSOR, Processor.class)));
        loads.add(Load.of(parts.the(Role.CARD, GraphicsCard.class)));
        loads.add(Load.of(parts.the(Role.BOARD, Board.class)));
        loads.add(Load.of(parts.the(Role.PUMP, Pump.class)));
        for (Drive drive : fitCase.drives()) {
            loads.add(Load.of(drive));
        }
        loads.add(Load.ofSmallParts(fitCase.catalog().practice().heat()));
        double sumW = new LoadSum(loads).milliwatts() / MILLI;
        double wantedW = sumW * (1 + fitCase.brief().terms().supplyHeadroomPercent() / PERCENT);
        return String.format(
                Locale.ROOT,
                "%.0f W come to %.0f W, %s has %.0f W",
                sumW,
                wantedW,
                supply.id(),
                supply.output().ratedW());
    }
}
