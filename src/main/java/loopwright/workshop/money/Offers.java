package loopwright.workshop.money;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import loopwright.answer.InspectAnswer;
import loopwright.answer.Inspection;
import loopwright.answer.RankAnswer;
import loopwright.fit.FitCase;
import loopwright.loop.Band;
import loopwright.rank.Build;
import loopwright.rank.RankResult.Ranked;

/** Two or three offers side by side, from the builds that no other beats: what each costs and gives. */
public final class Offers {

    private Offers() {}

    /**
     * An offer and what it gives.
     *
     * @param coolantC coolant at the brief's room, and the band of its rise over the room in K
     * @param noiseDBA at 1 m; weak as an absolute figure
     * @param hoursQuoted of labour in the offer
     * @param dearerCents than the cheapest of the offers
     * @param chosen whether it is the build that the papers are for
     */
    public record Offer(
            Quote quote,
            Ranked ranked,
            double coolantC,
            Band coolantOverRoomBand,
            double noiseDBA,
            double hoursQuoted,
            long dearerCents,
            boolean chosen) {}

    /** The build that the papers are for, and its quote. */
    public record Chosen(Ranked ranked, Quote quote) {}

    /**
     * Offers, coolest first: both ends of the unbeaten builds, one between, and always the chosen one.
     *
     * @param chosen the build that the papers are for, planned, and its quote
     * @param count at most so many, 2 or 3, besides the chosen one
     */
    public static List<Offer> of(RankAnswer answer, Chosen chosen, int count) {
        FitCase fitCase = answer.fitCase();
        String key = chosen.ranked().build().key();
        List<Ranked> spread = new ArrayList<>(answer.spread(count));
        if (spread.stream().noneMatch(r -> r.build().key().equals(key))) {
            spread.add(chosen.ranked());
            spread.sort(Comparator.comparingDouble(r -> answer.coolantOverRoomK(r.build())));
        }
        List<Quote> quotes = new ArrayList<>();
        spread.forEach(r -> quotes.add(
                r.build().key().equals(key)
                        ? chosen.quote()
                        : Quote.of(new InspectAnswer(new Inspection(fitCase, r)))));
        long least = quotes.stream().mapToLong(q -> q.sums().grossCents()).min().orElse(0);
        List<Offer> out = new ArrayList<>();
        for (int i = 0; i < spread.size(); i++) {
            Build build = spread.get(i).build();
            out.add(new Offer(
                    quotes.get(i),
                    spread.get(i),
                    fitCase.brief().limits().roomC() + answer.coolantOverRoomK(build),
                    answer.band(build),
                    build.outcome().sound().levelDBA().orElse(0),
                    quotes.get(i).labour().quotedMin() / 60.0,
                    quotes.get(i).sums().grossCents() - least,
                    build.key().equals(key)));
        }
        return List.copyOf(out);
    }
}
