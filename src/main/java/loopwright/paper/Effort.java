package loopwright.paper;

import java.math.BigDecimal;
import java.math.RoundingMode;
import loopwright.catalog.brief.Terms;
import loopwright.rank.ModBill;

/** What work takes, in hours, days and money. */
final class Effort {

    private static final double MIN_PER_H = 60;

    private Effort() {}

    /** {@code 3.5 h at the case + 2 h paint, 5 days, 293 EUR (62 material), 20 mm taller}. */
    static String text(ModBill bill, long costCents, int days, Terms terms) {
        return hours(bill.labourMin()) + " h at the case"
                + (bill.paintMin() == 0 ? "" : " + " + hours(bill.paintMin()) + " h paint") + ", " + days
                + (days == 1 ? " day" : " days") + ", " + money(costCents) + " " + terms.currency() + " ("
                + money(bill.materialCents()) + " material)"
                + (bill.heightAddedHmm() == 0 ? "" : ", " + Mm.text(bill.heightAddedHmm()) + " mm taller");
    }

    /** Hours with one decimal, without a needless zero. */
    static String hours(int minutes) {
        BigDecimal hours = Mm.rounded(minutes / MIN_PER_H, 1).stripTrailingZeros();
        return hours.scale() < 0 ? hours.setScale(0).toPlainString() : hours.toPlainString();
    }

    /** Whole units of money, half to even. */
    static String money(long cents) {
        return BigDecimal.valueOf(cents, 2).setScale(0, RoundingMode.HALF_UP).toPlainString();
    }
}
