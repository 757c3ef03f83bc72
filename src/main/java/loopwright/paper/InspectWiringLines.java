package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.answer.Powering;
import loopwright.catalog.part.Lead;
import loopwright.power.header.FanGroup;
import loopwright.power.header.PumpFeed;
import loopwright.power.header.WiringLimits;
import loopwright.power.header.WiringPlan;
import loopwright.power.header.WiringShortfall;

/** What feeds the fans and the pump, for people. */
final class InspectWiringLines {

    private static final double MILLI = 1000;

    private InspectWiringLines() {}

    static Passages of(Powering power) {
        Optional<WiringPlan> plan = power.wiring();
        Passages out = new Passages();
        if (plan.isEmpty()) {
            power.shortfall().ifPresent(s -> out.say("fans and pump: ", missing(s)));
            return out;
        }
        out.table(table(power, plan.get())).say("leads: ", leads(power, plan.get()));
        out.say(
                "",
                "A splitter or hub sends back the speed of one fan only. Starting fans take at most "
                        + power.task().limits().usePercent() + " % of what feeds them.");
        power.pumpCaution().ifPresent(c -> out.say("", c));
        return out;
    }

    static String missing(WiringShortfall shortfall) {
        return "MISSING: " + shortfall.missing() + "; cheapest cure: " + shortfall.remedy();
    }

    private static Columns table(Powering power, WiringPlan plan) {
        WiringLimits limits = power.task().limits();
        Columns table = Columns.headed("header", "starting A", "planned A", "feeds");
        for (WiringPlan.Branch branch : plan.branches()) {
            table.row(
                    branch.header().id(),
                    amps(branch.startMilliA()),
                    amps(limits.planned(branch.limitMilliA())),
                    fans(power, branch)
                            + branch.lead()
                                    .map(l -> (branch.isHub() ? " by hub " : " by ")
                                            + l.id()
                                            + (branch.isHub() ? ", fed by a SATA plug" : ""))
                                    .orElse(""));
        }
        plan.pump().ifPresent(p -> {
            boolean header = p.feed().way() == PumpFeed.Way.HEADER;
            table.row(
                    p.header().id(),
                    header ? amps(p.feed().startMilliA()) : "0.00",
                    amps(limits.planned(p.header().limitMilliA())),
                    p.feed().pump()
                            + switch (p.feed().way()) {
                                case HEADER -> ", alone";
                                case SATA -> ": its turns only, fed by a SATA plug";
                                case PERIPHERAL -> ": its turns only, fed by a 4-pin drive plug";
                            }
                            + (p.feed().said() ? "" : " (its file does not say its plug)"));
        });
        return table;
    }

    /** {@code front 2 fan-140-25-900, roof 2 fan-120-25-1300}. */
    static String fans(Powering power, WiringPlan.Branch branch) {
        List<String> out = new ArrayList<>();
        List<FanGroup> groups = power.task().fans();
        for (int i = 0; i < groups.size(); i++) {
            if (branch.counts().get(i) > 0) {
                out.add(groups.get(i).name() + " " + branch.counts().get(i) + " "
                        + groups.get(i).fan());
            }
        }
        return String.join(", ", out);
    }

    private static String leads(Powering power, WiringPlan plan) {
        if (plan.leads().isEmpty()) {
            return "none to buy";
        }
        List<String> ids = plan.leads().stream().map(Lead::id).sorted().toList();
        return String.join(", ", ids) + ": " + Mm.rounded(plan.cents() / 100.0, 2) + " " + power.currency()
                + ", not in the price above";
    }

    private static String amps(int milliA) {
        return Mm.rounded(milliA / MILLI, 2).toPlainString();
    }
}
