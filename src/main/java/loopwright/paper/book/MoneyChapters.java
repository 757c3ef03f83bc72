package loopwright.paper.book;

import java.math.BigDecimal;
import java.util.Locale;
import loopwright.paper.Mm;
import loopwright.rank.Bill;
import loopwright.workshop.money.Labour;
import loopwright.workshop.money.Offers;
import loopwright.workshop.money.OrderList;
import loopwright.workshop.money.Quote;
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
        for (Bill.Bought line : quote.bill().bought()) {
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
                hours(quote.labour().quotedMin()),
                "",
                money(quote.labour().spreadCents()));
        html.table(labour).heading("Sum");
        Rows sum = Rows.headed("what", currency);
        sum.row("parts", money(quote.bill().boughtCents()));
        sum.row("material", money(quote.bill().materialCents()));
        sum.row("labour", money(quote.labour().cents()));
        quote.outside().forEach(o -> sum.row("outside work: " + o.what(), money(o.cents())));
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
        html.text("Valid for " + quote.sums().validDays() + " days.");
        html.heading("It rests on").list(quote.words().assumptions());
        html.heading("Not included").list(quote.words().exclusions());
        quote.words().cautions().forEach(html::caution);
        html.text("Date, client: ______________________________   Date, workshop: ______________________________");
        return html;
    }

    Html offers() {
        Rows rows = Rows.headed("build", "price", "more than the cheapest", "coolant, C", "dB(A)", "hours quoted");
        String currency = papers.quote().sums().currency();
        for (Offers.Offer offer : papers.offers()) {
            rows.row(
                    offer.quote().key(),
                    money(offer.quote().sums().grossCents()) + " " + currency,
                    money(offer.dearerCents()) + " " + currency,
                    Mm.rounded(offer.coolantC(), 1) + " +-"
                            + Mm.rounded(offer.coolantOverRoomBand().halfK(), 1),
                    Mm.rounded(offer.noiseDBA(), 0).toPlainString(),
                    Mm.rounded(offer.hoursQuoted(), 1).toPlainString());
        }
        return new Html().table(rows).text("Noise: read the differences; absolute levels are weak.");
    }

    Html orders() {
        OrderList orders = papers.plan().orders();
        Rows rows = Rows.headed(
                "order by", "for", "part", "quantity", "price", "lead, days", "measured", "ordered", "here");
        for (OrderList.Line line : orders.lines()) {
            rows.row(
                    line.late() ? "at once" : line.orderBy().toString(),
                    line.role(),
                    line.part().id(),
                    line.quantity().toPlainString() + " " + line.unit(),
                    money(line.cents()),
                    String.valueOf(line.leadDays()),
                    line.measured().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                    "",
                    "");
        }
        return new Html()
                .table(rows)
                .text("In all " + money(orders.totalCents()) + " "
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
