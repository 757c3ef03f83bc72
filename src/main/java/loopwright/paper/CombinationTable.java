package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import loopwright.answer.UnlockAnswer;
import loopwright.answer.Unlocks.Combination;
import loopwright.catalog.chassis.Chassis;
import loopwright.rank.ModBill;

/** The combinations over all mounts that no other beats, for people. */
final class CombinationTable {

    private static final int QUOTED_K = 10;

    private CombinationTable() {}

    static List<String> lines(UnlockAnswer answer, int top) {
        List<Combination> all = answer.combinations();
        if (all.isEmpty()) {
            return List.of();
        }
        String currency = answer.fitCase().brief().terms().currency();
        Columns table = Columns.headed("W at 10 K", "h", currency, "cuts", "K over room", "key", "layout; mods");
        all.stream().limit(top).forEach(c -> row(table, answer, c));
        List<String> out = new ArrayList<>();
        out.add("All mounts together: what no other beats in conductance, hours and money; cuts seen+hidden.");
        out.addAll(table.lines("  "));
        if (all.size() > top) {
            out.add("  " + (all.size() - top) + " more are not shown: --top " + all.size() + " shows all.");
        }
        return out;
    }

    private static void row(Columns table, UnlockAnswer answer, Combination each) {
        Chassis chassis = answer.fitCase().chassis();
        ModBill bill = each.bill();
        OptionalDouble overRoomK = answer.overRoomK(each);
        table.row(
                Mm.rounded(QUOTED_K * each.conductanceWPerK(), 0).toPlainString(),
                Effort.hours(bill.handsOnMin()),
                Effort.money(each.costCents()),
                bill.visibleCuts() + "+" + bill.hiddenCuts(),
                overRoomK.isPresent()
                        ? Kelvin.text(overRoomK.getAsDouble()) + Kelvin.plusMinus(answer.overRoomBand(each))
                        : "-",
                each.layout().layout().key(),
                each.layout().layout().stacks().stream().map(StackWords::brief).collect(Collectors.joining(", ")) + "; "
                        + (each.mods().size() == 0
                                ? "as delivered"
                                : String.join(", ", each.mods().ids(chassis))));
    }
}
