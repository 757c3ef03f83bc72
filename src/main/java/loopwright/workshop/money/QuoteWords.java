package loopwright.workshop.money;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loopwright.catalog.brief.BriefLimits;
import loopwright.fit.FitCase;
import loopwright.rank.Build;

/** The sentences of an offer: common practice, and the brief's own limits. */
final class QuoteWords {

    private QuoteWords() {}

    static Quote.Words of(FitCase fitCase, Build build, Quote.Contingency contingency, Quote.Sums sums) {
        return new Quote.Words(assumptions(fitCase, build), exclusions(sums), cautions(contingency));
    }

    private static List<String> assumptions(FitCase fitCase, Build build) {
        BriefLimits limits = fitCase.brief().limits();
        List<String> out = new ArrayList<>();
        out.add(String.format(
                Locale.ROOT,
                "Room at %.0f C; coolant %.1f K over it at full load by the model, fans at %d %%.",
                limits.roomC(),
                build.outcome().coolantOverRoomCentiK() / 100.0,
                build.dutyPercent()));
        limits.noiseMaxDBA()
                .ifPresent(n -> out.add(String.format(Locale.ROOT, "At most %.0f dB(A) at 1 m at those speeds.", n)));
        out.add(
                "The case is as its maker delivers it; every dimension that is not measured yet is checked at the dry fit.");
        out.add("Prices and lead times are the catalogue's; a part replaced by another is a change, in writing.");
        out.add(
                "Tube, coolant and fittings are as planned, by the workshop's rule where a run finds no way; what the dry fit changes in"
                        + " them is on the workshop.");
        return out;
    }

    private static List<String> exclusions(Quote.Sums sums) {
        List<String> out = new ArrayList<>();
        out.add(
                sums.taxPercent().isPresent()
                        ? "Tax is in the total, at "
                                + BigDecimal.valueOf(sums.taxPercent().get())
                                        .stripTrailingZeros()
                                        .toPlainString() + " %; ask an accountant or the local rule."
                        : "Tax is not in this price; ask an accountant or the local rule.");
        out.add("Not in it: dispatch and its insurance, software, the client's own parts and their warranty.");
        out.add("Changes after the dry fit is approved: time and material, in writing, with a new date.");
        return out;
    }

    private static List<String> cautions(Quote.Contingency contingency) {
        List<String> out = new ArrayList<>();
        if (contingency.percent() < contingency.usualPercent()) {
            out.add(String.format(
                    Locale.ROOT,
                    "Contingency: %.0f %% is in this offer, the trade takes %d %% for this: %s. What goes beyond it is told before"
                            + " it is spent.",
                    contingency.percent(),
                    contingency.usualPercent(),
                    contingency.reason()));
        }
        out.add(
                "Cutting, spraying, coolant and mains can hurt people: local codes, the makers' sheets and licensed practice"
                        + " rule.");
        return out;
    }
}
