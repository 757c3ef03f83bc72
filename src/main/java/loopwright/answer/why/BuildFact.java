package loopwright.answer.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.answer.why.BuildWish.Figure;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.BriefLimits;

/**
 * Something that builds are asked to keep.
 *
 * @param id {@code wish:TEXT} or {@code limit:FIGURE}
 * @param sentence in words
 * @param limit the figure and its most, where it is one of those that builds are compared by
 */
record BuildFact(String id, String sentence, Optional<BuildWish> limit) {

    /** The brief's limits on components and on the air inside, as one. */
    static final String HEAT = "limit:components";

    /** The wishes of what fits, then those of builds, then the brief's limits. */
    static List<BuildFact> all(List<Stated> fitWishes, List<BuildWish> wishes, Brief brief) {
        String currency = brief.terms().currency();
        List<BuildFact> out = new ArrayList<>();
        fitWishes.forEach(w -> out.add(new BuildFact("wish:" + w.id(), "you want " + w.sentence(), Optional.empty())));
        wishes.forEach(
                w -> out.add(new BuildFact("wish:" + w.text(), "you want " + w.words(currency), Optional.of(w))));
        BriefLimits limits = brief.limits();
        limits.budgetCents().ifPresent(b -> out.add(limit(Figure.PRICE, b, currency)));
        out.add(limit(Figure.COOLANT, limits.coolantMaxC(), currency));
        limits.noiseMaxDBA().ifPresent(n -> out.add(limit(Figure.NOISE, n, currency)));
        limits.labourMaxH().ifPresent(h -> out.add(limit(Figure.LABOUR, h, currency)));
        limits.leadMaxDays().ifPresent(d -> out.add(limit(Figure.DAYS, d, currency)));
        limits.heat()
                .filter(h -> h.processorMaxC().isPresent()
                        || h.cardMaxC().isPresent()
                        || h.caseMaxC().isPresent())
                .ifPresent(h -> out.add(new BuildFact(HEAT, "the brief limits " + components(h), Optional.empty())));
        return List.copyOf(out);
    }

    private static BuildFact limit(Figure figure, double most, String currency) {
        BuildWish limit = new BuildWish(figure.word(), figure, most);
        return new BuildFact("limit:" + figure.word(), "the brief wants " + limit.words(currency), Optional.of(limit));
    }

    private static String components(BriefLimits.HeatLimits heat) {
        List<String> out = new ArrayList<>();
        heat.processorMaxC().ifPresent(c -> out.add("the processor to " + BuildWish.number(c, 1) + " C"));
        heat.cardMaxC().ifPresent(c -> out.add("the card to " + BuildWish.number(c, 1) + " C"));
        heat.caseMaxC().ifPresent(c -> out.add("the air inside to " + BuildWish.number(c, 1) + " C"));
        return String.join(", ", out);
    }
}
