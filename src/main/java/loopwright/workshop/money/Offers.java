package loopwright.workshop.money;

import java.util.ArrayList;
import java.util.List;
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
     */
    public record Offer(
            Quote quote,
            double coolantC,
            Band coolantOverRoomBand,
            double noiseDBA,
            double hoursQuoted,
            long dearerCents) {}

    /**
     * Offers, dearest first.
     *
     * @param count at most so many, 2 or 3
     */
    public static List<Offer> of(RankAnswer answer, QuoteWish wish, int count) {
        FitCase fitCase = answer.fitCase();
        List<Quote> quotes = new ArrayList<>();
        List<Ranked> spread = answer.spread(count);
        spread.forEach(r -> quotes.add(Quote.of(fitCase, r.build(), wish)));
        long least = quotes.stream().mapToLong(q -> q.sums().grossCents()).min().orElse(0);
        List<Offer> out = new ArrayList<>();
        for (int i = 0; i < spread.size(); i++) {
            Build build = spread.get(i).build();
            out.add(new Offer(
                    quotes.get(i),
                    fitCase.brief().limits().roomC() + answer.coolantOverRoomK(build),
                    answer.band(build),
                    build.outcome().sound().levelDBA().orElse(0),
                    quotes.get(i).labour().quotedMin() / 60.0,
                    quotes.get(i).sums().grossCents() - least));
        }
        return List.copyOf(out);
    }
}
