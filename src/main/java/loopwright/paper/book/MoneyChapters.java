package loopwright.paper.book;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loopwright.answer.Inspection;
import loopwright.catalog.chassis.Mod;
import loopwright.paper.InspectSections;
import loopwright.paper.Mm;
import loopwright.rank.Bill;
import loopwright.rank.Build;
import loopwright.workshop.money.Labour;
import loopwright.workshop.money.Offers;
import loopwright.workshop.money.OrderList;
import loopwright.workshop.money.Quote;
import loopwright.workshop.money.Sundries;
import loopwright.workshop.schedule.StageWords;

/** What it costs: the quote, offers side by side, what is ordered. */
final class MoneyChapters {

    private final WorkPapers papers;

    MoneyChapters(WorkPapers papers) {
        this.papers = papers;
    }

    Html quote() {
        Quote quote = papers.quote();
        String currency = quote.sums().currency();
        Html html = new Html().heading("Parts");
        Rows parts = Rows.headed("for", "part", "quantity", "unit", "price, " + currency);
        for (Bill.Bought line : quote.bought()) {
            parts.row(
                    line.role(),
                    line.part().title(),
                    line.quantity().toPlainString(),
                    line.unit(),
                    money(line.cents()));
        }
        quote.bill().materials().forEach(m -> parts.row("material", m.mod().title(), "1", "set", money(m.cents())));
        html.table(parts).heading("Labour");
        Rows labour = Rows.headed("stage", "low, h", "likely, h", "high, h", "price, " + currency);
        for (Labour.Line line : quote.labour().lines()) {
            labour.row(
                    StageWords.of(line.hours().stage()),
                    hours(line.hours().lowMin()),
                    Mm.rounded(line.hours().likelyMin() / 60, 1).toPlainString(),
                    hours(line.hours().highMin()),
                    money(line.cents()));
        }
        labour.row(
                "how far the whole may run off",
                "",
                "",
                "",
                money(quote.labour().spreadCents()));
        html.table(labour)
                .text("Hours in this quote: " + hours(quote.labour().quotedMin()) + ", likely hours and spread.")
                .heading("Sum");
        Rows sum = Rows.headed("what", currency);
        sum.row("parts", money(quote.boughtCents()));
        sum.row("material", money(quote.bill().materialCents()));
        sum.row("labour", money(quote.labour().cents()));
        quote.outside().forEach(o -> sum.row("outside work: " + o.what(), money(o.priceCents())));
        sum.row(
                "contingency " + percent(quote.contingency().percent()) + " %, usual "
                        + quote.contingency().usualPercent() + " %: "
                        + quote.contingency().reason(),
                money(quote.contingency().cents()));
        sum.row("net", money(quote.sums().netCents()));
        sum.row(
                quote.sums().taxPercent().map(p -> "tax " + percent(p) + " %").orElse("tax is not in it"),
                money(quote.sums().taxCents()));
        sum.row("to pay", money(quote.sums().grossCents()));
        sum.row(
                "of that as a deposit, before anything is ordered",
                money(quote.sums().depositCents()));
        sum.row("the rest, before it is handed over", money(quote.sums().balanceCents()));
        html.table(sum);
        html.text("Valid for " + quote.sums().validDays() + (quote.sums().validDays() == 1 ? " day." : " days."));
        html.heading("It rests on").list(quote.words().assumptions());
        html.heading("Not included").list(quote.words().exclusions());
        quote.words().cautions().forEach(html::caution);
        html.heading("Cuts and marks that stay");
        List<String> stays = stays();
        if (stays.isEmpty()) {
            html.text("None: the case stays as it is delivered.");
        }
        return html.list(stays)
                .text("Quote of build " + quote.key() + ", handover "
                        + papers.plan().schedule().finish().at().toLocalDate() + " if parts are ordered on "
                        + papers.plan().schedule().start() + ".")
                .text("Date of this offer: ______________________")
                .text("Workshop: ________________________________")
                .text("Client, date: _____________________________")
                .newPage();
    }

    private List<String> stays() {
        Inspection in = papers.inspection();
        List<String> out = new ArrayList<>();
        for (Mod mod : in.witness().mods().mods(in.fitCase().chassis())) {
            if (mod.look().wayBack() != Mod.WayBack.YES || mod.look().visibleCuts() > 0) {
                out.add(mod.title() + ": " + mod.look().visibleCuts() + " cuts that show, "
                        + mod.look().hiddenCuts() + " that do not; can be undone: "
                        + mod.look().wayBack().name().toLowerCase(Locale.ROOT));
            }
        }
        return out;
    }

    Html offers() {
        String currency = papers.quote().sums().currency();
        Rows rows = Rows.headed(
                "build",
                "what it has",
                "cuts seen",
                "to pay, " + currency,
                "more, " + currency,
                "coolant, C",
                "dB(A)",
                "hours");
        for (Offers.Offer offer : papers.offers()) {
            Build build = offer.ranked().build();
            rows.row(
                    offer.quote().key() + (offer.chosen() ? " (this one)" : ""),
                    InspectSections.stacks(build),
                    String.valueOf(build.bill().visibleCuts()),
                    money(offer.quote().sums().grossCents()),
                    money(offer.dearerCents()),
                    Mm.rounded(offer.coolantC(), 1) + " +-"
                            + Mm.rounded(offer.coolantOverRoomBand().halfK(), 1),
                    Mm.rounded(offer.noiseDBA(), 0).toPlainString(),
                    Mm.rounded(offer.hoursQuoted(), 1).toPlainString());
        }
        return new Html()
                .table(rows)
                .text(
                        "Each with its own planned runs, parts and hours; more: than the cheapest of these. Noise: read the"
                                + " differences; absolute levels are weak.");
    }

    Html orders() {
        OrderList orders = papers.plan().orders();
        Rows rows = Rows.headed(
                "order by",
                "for",
                "part",
                "quantity",
                "price, " + papers.quote().sums().currency(),
                "lead, days",
                "measured",
                "here");
        for (OrderList.Line line : orders.lines()) {
            rows.row(
                    line.late() ? "at once" : line.orderBy().toString(),
                    line.role(),
                    line.part().title() + " (" + line.part().id() + ")",
                    line.quantity().toPlainString() + " " + line.unit(),
                    money(line.cents()),
                    String.valueOf(line.leadDays()),
                    line.measured() == OrderList.Measured.NOTHING_TO_MEASURE
                            ? ""
                            : line.measured().name().toLowerCase(Locale.ROOT),
                    "");
        }
        Rows besides = Rows.headed("besides, to have at hand", "how many", "unit", "paid by");
        Sundries.of(papers.fasteners(), papers.finish(), papers.templates())
                .forEach(s -> besides.row(s.what(), String.valueOf(s.count()), s.unit(), s.paidBy()));
        return new Html()
                .table(rows)
                .table(besides)
                .text("Parts, tube, coolant and leads in all " + money(orders.totalCents()) + " "
                        + papers.quote().sums().currency() + ".");
    }

    /** How the offer comes from the price that builds are ranked by. */
    Html fromRank() {
        Rows rows = Rows.headed("what", papers.quote().sums().currency());
        papers.quote().fromRank().forEach(s -> rows.row(s.what(), money(s.cents())));
        return new Html().table(rows);
    }

    private static String hours(int minutes) {
        return Mm.rounded(minutes / 60.0, 1).toPlainString();
    }

    private static String percent(double percent) {
        return BigDecimal.valueOf(percent).stripTrailingZeros().toPlainString();
    }

    private static String money(long cents) {
        return BigDecimal.valueOf(cents, 2).toPlainString();
    }
}
