package loopwright.paper.book;

import java.time.LocalDate;
import java.util.List;
import loopwright.answer.InspectAnswer;
import loopwright.answer.Inspection;
import loopwright.answer.RankAnswer;
import loopwright.rank.RankResult.Ranked;
import loopwright.workshop.assembly.Assembly;
import loopwright.workshop.fasten.Fasteners;
import loopwright.workshop.finish.Finish;
import loopwright.workshop.money.Offers;
import loopwright.workshop.money.OrderList;
import loopwright.workshop.money.Quote;
import loopwright.workshop.schedule.Schedule;
import loopwright.workshop.schedule.ScheduleWish;
import loopwright.workshop.template.Templates;

/**
 * Everything that is worked out for the papers of one build, once.
 *
 * @param answer the build in full
 * @param unbeaten all builds that no other beats
 * @param offers two or three of them side by side
 */
public record WorkPapers(
        InspectAnswer answer,
        List<Ranked> unbeaten,
        Templates templates,
        Fasteners fasteners,
        Finish finish,
        Plan plan,
        Quote quote,
        List<Offers.Offer> offers) {

    /** Offers side by side. */
    private static final int OFFERS = 3;

    /** Copies. */
    public WorkPapers {
        unbeaten = List.copyOf(unbeaten);
        offers = List.copyOf(offers);
    }

    /** When things are done, ordered, and put together. */
    public record Plan(Schedule schedule, OrderList orders, Assembly assembly) {}

    /**
     * Works it out.
     *
     * @param ranking what the build is among
     * @param start the day on which parts are ordered and work may begin
     */
    public static WorkPapers of(InspectAnswer answer, RankAnswer ranking, LocalDate start) {
        Inspection in = answer.inspection();
        Quote quote = Quote.of(answer);
        Schedule schedule = Schedule.of(in, quote.bought(), ScheduleWish.from(start));
        Fasteners fasteners = Fasteners.of(in);
        Assembly assembly = Assembly.of(in, answer.plumbing().plan(), fasteners);
        return new WorkPapers(
                answer,
                ranking.result().unbeaten(),
                Templates.of(in),
                fasteners,
                Finish.of(in, coolantL(quote)),
                new Plan(
                        schedule,
                        OrderList.of(
                                schedule,
                                Schedule.practice(in.fitCase()).offer().orderBufferDays()),
                        assembly),
                quote,
                Offers.of(ranking, new Offers.Chosen(new Ranked(in.build(), 1, in.witness()), quote), OFFERS));
    }

    private static double coolantL(Quote quote) {
        return quote.bought().stream()
                .filter(b -> b.role().equals("coolant"))
                .mapToDouble(b -> b.quantity().doubleValue())
                .sum();
    }

    /** The build and its state. */
    public Inspection inspection() {
        return answer.inspection();
    }
}
