package loopwright.workshop.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import loopwright.answer.InspectAnswer;
import loopwright.answer.Inspection;
import loopwright.catalog.brief.OfferTerms;
import loopwright.catalog.brief.Terms;
import loopwright.catalog.standard.Workshop;
import loopwright.fit.FitCase;
import loopwright.rank.Bill;
import loopwright.rank.Build;
import loopwright.workshop.schedule.Schedule;
import loopwright.workshop.schedule.WorkPlans;

/**
 * What the client is offered. Unit: whole cents of the brief's currency; every sum is exactly the sum of its lines.
 *
 * @param key of the build
 * @param bill what the ranking's price is made of; its materials are the offer's too
 * @param bought what is bought: the bill's, as planned where it is planned
 * @param labour by stage, low, likely, high
 * @param outside work that others do
 * @param contingency on all of that, with its reason
 * @param sums the whole
 * @param words what it rests on
 */
public record Quote(
        String key,
        Bill bill,
        List<Bill.Bought> bought,
        Labour labour,
        List<OfferTerms.Outside> outside,
        Contingency contingency,
        Sums sums,
        Words words) {

    /** Copies. */
    public Quote {
        bought = List.copyOf(bought);
        outside = List.copyOf(outside);
    }

    /**
     * What is added for what nobody can know.
     *
     * @param percent of the brief's terms
     * @param usualPercent what the trade takes for such a job
     * @param reason why there is any
     */
    public record Contingency(double percent, int usualPercent, long cents, String reason) {}

    /**
     * The whole.
     *
     * @param netCents everything before tax
     * @param taxPercent absent: tax is not in it, and the offer says so
     * @param grossCents what the client pays
     * @param depositCents of that, before anything is ordered
     * @param balanceCents the rest, before dispatch
     */
    public record Sums(
            String currency,
            long netCents,
            Optional<Double> taxPercent,
            long taxCents,
            long grossCents,
            long depositCents,
            long balanceCents,
            int validDays) {}

    /** What it rests on, what is left out, what to take care of. */
    public record Words(List<String> assumptions, List<String> exclusions, List<String> cautions) {
        /** Copies. */
        public Words {
            assumptions = List.copyOf(assumptions);
            exclusions = List.copyOf(exclusions);
            cautions = List.copyOf(cautions);
        }
    }

    /**
     * One line of how the offer comes from the ranking's price.
     *
     * @param cents what is added; the lines sum to the offer's net
     */
    public record Step(String what, long cents) {}

    /** The offer for a build, with tube, coolant, fittings and leads as they are planned. */
    public static Quote of(InspectAnswer answer) {
        Inspection in = answer.inspection();
        return of(in.fitCase(), in.build(), Purchases.of(answer));
    }

    /**
     * The offer for a build.
     *
     * @param bought what is bought for it
     * @throws IllegalArgumentException if practice.yaml says nothing of the workshop
     */
    public static Quote of(FitCase fitCase, Build build, List<Bill.Bought> bought) {
        Workshop practice = Schedule.practice(fitCase);
        Terms terms = fitCase.brief().terms();
        Bill bill = Bill.of(fitCase, build);
        Labour labour = Labour.of(WorkPlans.of(fitCase, build, Set.of()), practice, terms.rateCentsPerH());
        long goods = sum(bought) + bill.materialCents();
        OfferTerms offer = terms.offer().orElse(OfferTerms.USUAL);
        long base = goods + labour.cents() + outsideCents(offer.outside());
        Contingency contingency = contingency(base, build, practice, terms);
        Sums sums = sums(goods, labour, base + contingency.cents(), practice, terms);
        return new Quote(
                build.key(),
                bill,
                bought,
                labour,
                offer.outside(),
                contingency,
                sums,
                QuoteWords.of(fitCase, build, contingency, sums));
    }

    private static long sum(List<Bill.Bought> bought) {
        return bought.stream().mapToLong(Bill.Bought::cents).sum();
    }

    /** What is bought, cents. */
    public long boughtCents() {
        return sum(bought);
    }

    private static long outsideCents(List<OfferTerms.Outside> outside) {
        return outside.stream().mapToLong(OfferTerms.Outside::priceCents).sum();
    }

    private static Contingency contingency(long base, Build build, Workshop practice, Terms terms) {
        Workshop.Contingency usual = practice.offer().contingency();
        boolean shows = build.bill().visibleCuts() > 0 || build.bill().paintMin() > 0;
        String reason;
        int percent;
        if (shows) {
            reason = "paint or cuts that show: a slip means a new panel or a repaint";
            percent = usual.paintOrVisibleCutsPercent();
        } else if (terms.offer().orElse(OfferTerms.USUAL).newCase()) {
            reason = "a case that is new to the workshop: dimensions and welds nobody has seen";
            percent = usual.newCasePercent();
        } else {
            reason = "a known case: parts replaced by revisions, small errors";
            percent = usual.knownCasePercent();
        }
        return new Contingency(
                terms.contingencyPercent(), percent, percentOf(base, terms.contingencyPercent()), reason);
    }

    private static Sums sums(long goods, Labour labour, long net, Workshop practice, Terms terms) {
        OfferTerms offer = terms.offer().orElse(OfferTerms.USUAL);
        double taxPercent = offer.taxPercent().orElse(0.0);
        long tax = percentOf(net, taxPercent);
        int labourPercent = offer.depositLabourPercent().orElse(practice.offer().depositLabourPercent());
        long depositNet = goods + percentOf(labour.cents(), labourPercent);
        long deposit = depositNet + percentOf(depositNet, taxPercent);
        return new Sums(
                terms.currency(),
                net,
                offer.taxPercent(),
                tax,
                net + tax,
                deposit,
                net + tax - deposit,
                offer.validDays().orElse(practice.offer().validDays()));
    }

    /** A percentage of cents, half up; exact in the decimals of the file. */
    static long percentOf(long cents, double percent) {
        return BigDecimal.valueOf(cents)
                .multiply(BigDecimal.valueOf(percent))
                .movePointLeft(2)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
    }

    /** From the ranking's price to this offer, line by line; the lines sum to the net. */
    public List<Step> fromRank() {
        List<Step> out = new ArrayList<>();
        out.add(new Step("price in the ranking", bill.priceCents()));
        out.add(new Step(
                "tube, coolant, fittings and leads as planned, where the ranking has the workshop's rule",
                boughtCents() - bill.boughtCents()));
        out.add(new Step(
                "labour at likely + spread, where the ranking counts the planned minutes",
                labour.cents() - bill.labourCents()));
        out.add(new Step("work done outside", outsideCents(outside)));
        out.add(new Step("contingency on these", contingency.cents() - bill.contingencyCents()));
        return List.copyOf(out);
    }
}
