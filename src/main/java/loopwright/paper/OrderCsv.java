package loopwright.paper;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import loopwright.workshop.money.OrderList;

/** The order list for a spreadsheet; the last row is the sum. */
public final class OrderCsv {

    private OrderCsv() {}

    /** Writes the list. */
    public static void write(PrintWriter out, OrderList orders, String currency) {
        Csv csv = new Csv(out);
        csv.row(List.of(
                "order_by",
                "role",
                "part",
                "title",
                "quantity",
                "unit",
                "unit_price_" + currency,
                "price_" + currency,
                "lead_days",
                "need",
                "at_once",
                "latest",
                "measured",
                "ordered",
                "arrived"));
        for (OrderList.Line line : orders.lines()) {
            csv.row(List.of(
                    line.orderBy().toString(),
                    line.role(),
                    line.part().id(),
                    line.part().title(),
                    line.quantity().toPlainString(),
                    line.unit(),
                    money(line.unitCents()),
                    money(line.cents()),
                    Integer.toString(line.leadDays()),
                    line.need().toString(),
                    line.late() ? "yes" : "no",
                    line.latest().toString(),
                    line.measured().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                    "",
                    ""));
        }
        csv.row(List.of("", "sum", "", "", "", "", "", money(orders.totalCents()), "", "", "", "", "", "", ""));
        out.flush();
    }

    private static String money(long cents) {
        return BigDecimal.valueOf(cents, 2).toPlainString();
    }
}
