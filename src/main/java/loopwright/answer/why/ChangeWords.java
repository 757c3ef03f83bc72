package loopwright.answer.why;

import static loopwright.answer.why.WishWords.mm;

import java.util.Locale;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.part.Part;
import loopwright.fit.Breaches;
import loopwright.fit.Candidate;
import loopwright.fit.Fact;
import loopwright.fit.Lacking;
import loopwright.fit.rules.Role;

/** What to give up or change about a fact, with the numbers of the candidate that then has the rest. */
final class ChangeWords {

    private final Breaches breaches;
    private final FactWords words;
    private final Chassis chassis;
    private final boolean asked;

    ChangeWords(Breaches breaches, FactWords words) {
        this.breaches = breaches;
        this.words = words;
        this.chassis = breaches.wished().asked().chassis();
        this.asked = breaches.wished().isAsked();
    }

    /** The change. */
    Stated of(Fact fact, Candidate candidate) {
        if (fact.kind() == Fact.Kind.CLEAR) {
            Lacking.Lack lack = words.lack(fact, candidate);
            String text = "make " + mm(lack.lackHmm()) + " mm more room between " + words.named(lack.one(), candidate)
                    + " and " + words.named(lack.other(), candidate);
            return Stated.ofRoom(fact.id(), text, lack.lackHmm());
        }
        return Stated.of(fact.id(), text(fact, candidate));
    }

    private String text(Fact fact, Candidate candidate) {
        String about = fact.about();
        String[] two = about.split(":", 2);
        return switch (fact.kind()) {
            case WISH -> asked ? "give up " + about : "do without a radiator";
            case FORBIDDEN -> "allow " + WishWords.mod(about, chassis);
            case VISIBLE_CUTS ->
                "allow "
                        + candidate.mods().mods(chassis).stream()
                                .mapToInt(m -> m.look().visibleCuts())
                                .sum()
                        + " cuts that show";
            case CUTS ->
                "allow "
                        + candidate.mods().mods(chassis).stream()
                                .mapToInt(ChangeWords::cuts)
                                .sum()
                        + " cuts";
            case CHOICE -> choice(about, candidate);
            case NEEDS -> "do " + two[0] + " without " + two[1] + ", were that possible";
            case EXCLUDES -> "do both " + two[0] + " and " + two[1] + ", were that possible";
            case PARTS -> "were it not that " + words.fact(fact, candidate).sentence();
            case PLACE -> "find a place for " + words.placed(about, candidate);
            case SEAT -> "have holes at the " + about + " where the stack clears everything";
            case OPEN ->
                "accept the " + about + " as it is: "
                        + words.fact(fact, candidate).sentence();
            case OUTSIDE ->
                "give the " + about + " more air: "
                        + words.fact(fact, candidate).sentence();
            case KNOWN -> "measure " + String.join(", ", breaches.toMeasure(fact, candidate));
            case CLEAR -> throw new IllegalStateException("told with what is lacking");
        };
    }

    private static int cuts(Mod mod) {
        return mod.look().visibleCuts() + mod.look().hiddenCuts();
    }

    private static String choice(String role, Candidate candidate) {
        if (role.equals("fans")) {
            int thickness = candidate.shapes().stream()
                    .mapToInt(s -> s.fanThickness().valueHmm())
                    .min()
                    .orElse(0);
            return "take fans " + mm(thickness) + " mm thick";
        }
        Part part = candidate.parts().parts().get(Role.valueOf(role.toUpperCase(Locale.ROOT)));
        return "take another " + role + " than the brief's" + (part == null ? "" : ", such as " + part.id());
    }
}
