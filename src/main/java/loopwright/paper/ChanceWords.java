package loopwright.paper;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.catalog.brief.Brief;
import loopwright.fit.Gap;
import loopwright.fit.Witness;
import loopwright.tolerance.Chance;
import loopwright.tolerance.Confidence;

/** How likely something fits, in words and in numbers; what nobody has measured has no chance to tell. */
final class ChanceWords {

    /** From here on a percentage without decimals would say too much. */
    private static final double NEARLY_ALL = 0.999;

    private static final int PERCENT = 100;
    private static final int DECIMALS = 3;

    private ChanceWords() {}

    /** {@code likely, 93 %}: the word and whole percents, rounded down. */
    static String of(OptionalDouble probability) {
        return word(probability) + percent(probability).map(p -> ", " + p).orElse("");
    }

    /** {@code likely}. */
    static String word(OptionalDouble probability) {
        return probability.isEmpty()
                ? "unknown"
                : Chance.of(Chance.told(probability.getAsDouble())).word();
    }

    /** {@code 93 %}. */
    static Optional<String> percent(OptionalDouble probability) {
        if (probability.isEmpty()) {
            return Optional.empty();
        }
        double told = Chance.told(probability.getAsDouble());
        if (told >= NEARLY_ALL) {
            return Optional.of("over 99.9 %");
        }
        int whole = (int) (told * PERCENT + 1e-9);
        return Optional.of(whole == 0 ? "under 1 %" : whole + " %");
    }

    /**
     * {@code likely, 93 %; likeliest to clash: card to front radiator, 95 %}, and whether the brief asks for more; where
     * nothing is likely to clash, no place is named.
     */
    static String fits(Witness witness, Brief brief) {
        OptionalDouble probability = witness.probability();
        if (probability.isPresent() && Chance.told(probability.getAsDouble()) >= NEARLY_ALL) {
            return of(probability);
        }
        Gap clash = witness.likeliestClash();
        return of(probability) + "; likeliest to clash: " + clash.one() + " to " + clash.other()
                + percent(clash.probability()).map(p -> ", " + p).orElse("")
                + below(probability, brief);
    }

    /** The mark of what is less sure than the brief asks for; nothing for all else. */
    static String below(OptionalDouble probability, Brief brief) {
        return Confidence.isBelow(probability, brief.limits().mods().confidencePercent())
                ? "; BELOW the brief's confidence of "
                        + Mm.rounded(brief.limits().mods().confidencePercent().orElseThrow(), 1)
                                .stripTrailingZeros()
                                .toPlainString()
                        + " %"
                : "";
    }

    /** The number, or null. */
    static Object number(OptionalDouble probability) {
        return probability.isPresent() ? Mm.rounded(probability.getAsDouble(), DECIMALS) : Json.NOTHING;
    }

    /** The number, or nothing. */
    static String text(OptionalDouble probability) {
        return probability.isPresent()
                ? Mm.rounded(probability.getAsDouble(), DECIMALS).toPlainString()
                : "";
    }

    /** Puts how sure a layout or build is. */
    static void put(Map<String, Object> out, Witness witness, Brief brief) {
        OptionalDouble probability = witness.probability();
        out.put("fit_probability", number(probability));
        out.put("chance", word(probability));
        out.put(
                "below_confidence",
                Confidence.isBelow(probability, brief.limits().mods().confidencePercent()));
        out.put("likeliest_clash", gap(witness.likeliestClash()));
    }

    /** A gap, with what may be off in it. */
    static Map<String, Object> gap(Gap gap) {
        Map<String, Object> out = Json.object();
        out.put("margin_mm", Mm.number(gap.marginHmm()));
        out.put("clearance_mm", Mm.number(gap.clearanceHmm()));
        out.put("need_mm", Mm.number(gap.needHmm()));
        out.put("between", java.util.List.of(gap.one(), gap.other()));
        out.put("verdict", JsonWords.of(gap.verdict()));
        out.put("worst_case_mm", Mm.number(gap.worstCaseHmm()));
        out.put("rss_mm", Mm.number(gap.rssHmm()));
        OptionalDouble probability = gap.probability();
        out.put("probability", number(probability));
        out.put("chance", word(probability));
        return out;
    }
}
