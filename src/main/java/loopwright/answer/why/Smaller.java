package loopwright.answer.why;

import static loopwright.answer.why.WishWords.mm;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import loopwright.answer.Halt;
import loopwright.catalog.Catalog;
import loopwright.catalog.part.Part;
import loopwright.fit.Breaches;
import loopwright.fit.Candidate;
import loopwright.fit.FitCase;
import loopwright.fit.Lacking;
import loopwright.fit.Resized;
import loopwright.fit.Wish;
import loopwright.fit.WishedCase;
import loopwright.fit.rules.Role;

/**
 * How small a part would have to be where it is just the one that is in the way: memory by its height, card and supply by their
 * length. Found by searching again with the part that much smaller.
 */
final class Smaller {

    private static final Map<Role, String> MEASURES =
            Map.of(Role.MEMORY, "high", Role.CARD, "long", Role.SUPPLY, "long");

    private final WishedCase wished;
    private final Halt halt;

    Smaller(WishedCase wished, Halt halt) {
        this.wished = wished;
        this.halt = halt;
    }

    /** The part that would do; nothing where its size does not help. */
    Optional<Stated> of(Lacking.Lack lack, Candidate candidate) {
        for (Map.Entry<Role, Part> part : candidate.parts().parts().entrySet()) {
            boolean inTheWay = (":" + lack.fact().about() + ":")
                    .contains(":" + part.getKey().word() + ":");
            if (inTheWay
                    && MEASURES.containsKey(part.getKey())
                    && halt.because().isEmpty()) {
                Optional<Part> smaller = Resized.by(part.getValue(), -lack.lackHmm());
                if (smaller.filter(this::helps).isPresent()) {
                    return Optional.of(stated(part.getKey(), part.getValue(), lack.lackHmm()));
                }
            }
        }
        return Optional.empty();
    }

    private static Stated stated(Role role, Part part, int lackHmm) {
        int now = Resized.measure(part).orElseThrow().valueHmm();
        return Stated.ofRoom(
                "smaller:" + role.word(),
                "or a " + role.word() + " at most " + mm(now - lackHmm) + " mm " + MEASURES.get(role) + "; " + part.id()
                        + " has " + mm(now),
                lackHmm);
    }

    private boolean helps(Part smaller) {
        if (Resized.measure(smaller).orElseThrow().valueHmm() <= 0) {
            return false;
        }
        FitCase asked = wished.asked();
        Catalog was = asked.catalog();
        Map<String, Part> parts = new TreeMap<>(was.parts());
        parts.put(smaller.id(), smaller);
        Catalog changed = new Catalog(was.version(), was.currency(), parts, was.standards(), was.practice());
        FitCase fitCase = new FitCase(changed, asked.chassis(), asked.brief());
        List<Wish> wishes = wished.isAsked() ? wished.wishes() : List.of();
        return new Breaches(
                        new WishedCase(fitCase, wishes), () -> halt.because().isPresent())
                .whole()
                .isPresent();
    }
}
