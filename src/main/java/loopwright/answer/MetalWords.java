package loopwright.answer;

import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.Radiator.Metal;
import loopwright.fit.FitCase;
import loopwright.fit.rules.Role;

/** Which blocks, cards and radiators that a brief allows are of which metal. */
final class MetalWords {

    /** Names shown of each metal. */
    private static final int SHOWN = 6;

    private MetalWords() {}

    static String of(FitCase fitCase) {
        return "Aluminium: " + named(fitCase, Metal.ALUMINIUM) + ". Copper: " + named(fitCase, Metal.COPPER) + ".";
    }

    private static String named(FitCase fitCase, Metal metal) {
        List<String> out = new ArrayList<>();
        for (Part part : fitCase.candidates(Role.BLOCK)) {
            if (part instanceof Block block && block.flow().metal() == metal) {
                out.add(block.id());
            }
        }
        for (Part part : fitCase.candidates(Role.CARD)) {
            if (part instanceof GraphicsCard card
                    && card.cooling() == GraphicsCard.Cooling.BLOCK
                    && card.power().block().filter(b -> b.metal() == metal).isPresent()) {
                out.add(card.id());
            }
        }
        fitCase.shapes().radiators().values().stream()
                .flatMap(List::stream)
                .filter(r -> r.ports().metal() == metal)
                .map(Radiator::id)
                .distinct()
                .sorted()
                .forEach(out::add);
        if (out.isEmpty()) {
            return "nothing";
        }
        String more = out.size() > SHOWN ? " and " + (out.size() - SHOWN) + " more" : "";
        return String.join(", ", out.subList(0, Math.min(SHOWN, out.size()))) + more;
    }
}
