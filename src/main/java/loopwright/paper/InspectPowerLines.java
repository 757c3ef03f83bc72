package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import loopwright.answer.Powering;
import loopwright.power.LoadParts;
import loopwright.power.RailBudget;
import loopwright.power.Surge;

/** The electrics of a build, for people. */
final class InspectPowerLines {

    private InspectPowerLines() {}

    static Passages of(Powering power) {
        Passages out = new Passages().table(rails(power)).gap();
        supply(power, out);
        out.say("burst: ", surge(power));
        Powering.Burst first = power.bursts().stream().findFirst().orElse(null);
        if (first != null) {
            out.say(
                    "between bursts: ",
                    "at most " + watts(first.betweenW()) + " W where bursts of " + watts(first.burstW()) + " W take "
                            + Mm.rounded(first.row().dutyPercent(), 0) + " % of the time, "
                            + Mm.rounded(first.row().timeUs(), 0) + " us each (supply guide)");
        }
        out.gap();
        Columns plugs = Columns.headed("plugs of the supply", "wanted", "there");
        power.connectors().forEach(c -> plugs.row(c.name(), Integer.toString(c.wanted()), Integer.toString(c.there())));
        return out.table(plugs)
                .gap()
                .then(InspectWiringLines.of(power))
                .say(
                        "",
                        "Never open a supply. Mains wiring is for licensed people; local codes and the makers' instructions rule.");
    }

    private static Columns rails(Powering power) {
        Map<LoadParts.State, RailBudget> budgets = power.budgets();
        Columns table = Columns.headed("rail, W", "idle", "work", "worst", "there", "left");
        Optional<RailBudget> there = power.capacity();
        row(table, "12 V", budgets, RailBudget::twelveMilliW, there.map(RailBudget::twelveMilliW));
        row(table, "5 V + 3.3 V", budgets, RailBudget::lowMilliW, there.map(RailBudget::lowMilliW));
        double ratedW = power.supply().output().ratedW();
        row(table, "all", budgets, RailBudget::sumMilliW, Optional.of(Math.round(ratedW * 1000)));
        return table;
    }

    /** What a budget says of a rail. */
    private interface Rail {
        long milliW(RailBudget budget);
    }

    private static void row(
            Columns table, String name, Map<LoadParts.State, RailBudget> budgets, Rail rail, Optional<Long> there) {
        List<String> cells = new ArrayList<>(List.of(name));
        long worst = 0;
        for (RailBudget budget : budgets.values()) {
            worst = rail.milliW(budget);
            cells.add(watts(LoadParts.watts(worst)));
        }
        cells.add(there.map(t -> watts(LoadParts.watts(t))).orElse("-"));
        long last = worst;
        cells.add(there.map(t -> watts(LoadParts.watts(t - last))).orElse("-"));
        table.row(cells.toArray(String[]::new));
    }

    private static void supply(Powering power, Passages out) {
        Columns table =
                Columns.headed("supply", "load W", "load %", "efficiency %", "mains W", "heat W", "dB(A) at 1 m");
        for (Powering.AtLoad at : power.atLoads()) {
            table.row(
                    at.state().toString().toLowerCase(Locale.ROOT),
                    watts(at.loadW()),
                    Mm.rounded(at.loadPercent(), 0).toPlainString(),
                    Mm.rounded(at.efficiencyPercent(), 1).toPlainString(),
                    watts(at.mainsW()),
                    watts(at.heatW()),
                    Mm.rounded(at.noiseDBA(), 1).toPlainString());
        }
        out.table(table);
        power.level().ifPresent(l -> out.say("", "efficiency: its sheet reaches the level " + l.level() + " (230 V)"));
        if (power.supply().noise().isEmpty()) {
            out.say("", "its sheet gives no noise at part load: its loudest is taken at any load");
        }
    }

    private static String surge(Powering power) {
        Surge surge = power.surge();
        String parts = "card " + watts(Surge.watts(surge.cardScaled())) + " + processor "
                + watts(Surge.watts(surge.processorScaled())) + " + rest " + watts(Surge.watts(surge.restScaled()))
                + " = "
                + watts(Surge.watts(surge.scaled())) + " W; ";
        return parts
                + power.stoodW()
                        .map(w -> power.supply().id() + " stands " + watts(w) + " W for 100 us, "
                                + watts(w - Surge.watts(surge.scaled())) + " W left")
                        .orElse(power.supply().id() + " does not say what it stands");
    }

    private static String watts(double watts) {
        return Mm.rounded(watts, 0).toPlainString();
    }
}
