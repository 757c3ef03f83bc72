package loopwright.paper;

import java.util.Locale;
import loopwright.fit.Gap;
import loopwright.fit.Witness;
import loopwright.geometry.Verdict;

/** A gap in the builder's words. */
final class GapWords {

    private GapWords() {}

    /** {@code supply plug to floor radiator 0.4 mm: TIGHT}, with the need where there is one. */
    static String text(Gap gap) {
        String distance = Mm.text(gap.clearanceHmm()) + " mm";
        String need = gap.needHmm() == 0
                ? ""
                : " (" + Mm.text(gap.marginHmm()) + " over its need of " + Mm.text(gap.needHmm()) + ")";
        return gap.one() + " to " + gap.other() + " " + distance + need + ": " + verdict(gap.verdict());
    }

    /** The tightest place; if no stack has to do with it, also the tightest that a stack has to do with. */
    static String tightest(Witness witness) {
        Gap first = witness.tightest();
        if (isOfStack(witness, first)) {
            return text(first);
        }
        return text(first)
                + witness.gaps().stream()
                        .filter(g -> isOfStack(witness, g))
                        .findFirst()
                        .map(g -> "; at a stack: " + text(g))
                        .orElse("");
    }

    private static boolean isOfStack(Witness witness, Gap gap) {
        return witness.stacks().stream()
                .map(at -> at.stack().frame().mount().id() + " ")
                .anyMatch(m -> gap.one().startsWith(m + "radiator")
                        || gap.one().startsWith(m + "fans")
                        || gap.other().startsWith(m + "radiator")
                        || gap.other().startsWith(m + "fans"));
    }

    /** {@code tightest 0.4 mm TIGHT}: the margin alone. */
    static String margin(Gap gap) {
        return "tightest " + Mm.text(gap.marginHmm()) + " mm " + verdict(gap.verdict());
    }

    /** TIGHT shouts; the others do not. */
    static String verdict(Verdict verdict) {
        return switch (verdict) {
            case CLASH, TIGHT -> verdict.name();
            case CLOSE, CLEAR -> verdict.name().toLowerCase(Locale.ROOT);
        };
    }
}
