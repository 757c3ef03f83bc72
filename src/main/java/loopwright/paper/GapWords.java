package loopwright.paper;

import java.util.Locale;
import loopwright.fit.Gap;
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
