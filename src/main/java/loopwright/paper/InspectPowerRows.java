package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import loopwright.answer.Powering;
import loopwright.catalog.part.Lead;

/** The electrics of a build in sentences, for spreadsheets: a load, a connector, a header or a lack each. */
final class InspectPowerRows {

    private InspectPowerRows() {}

    static List<String> of(Powering power) {
        List<String> out = new ArrayList<>();
        for (Powering.AtLoad at : power.atLoads()) {
            out.add(JsonWords.of(at.state()) + ": " + Mm.rounded(at.loadW(), 1) + " W, "
                    + Mm.rounded(at.loadPercent(), 0) + " % of "
                    + power.supply().id() + ", "
                    + Mm.rounded(at.mainsW(), 1) + " W from the mains, " + Mm.rounded(at.noiseDBA(), 1) + " dB(A)");
        }
        power.connectors()
                .forEach(c -> out.add("plugs, " + c.name() + ": " + c.wanted() + " wanted, " + c.there() + " there"));
        power.wiring().ifPresent(plan -> {
            plan.branches()
                    .forEach(b -> out.add("header " + b.header().id() + ": " + InspectWiringLines.fans(power, b)
                            + b.lead().map(l -> " by " + l.id()).orElse("")));
            plan.pump()
                    .ifPresent(p -> out.add(
                            "header " + p.header().id() + ": " + p.feed().pump() + ", fed by "
                                    + JsonWords.of(p.feed().way())));
            List<String> leads = plan.leads().stream().map(Lead::id).sorted().toList();
            out.add("leads: " + (leads.isEmpty() ? "none" : String.join(" ", leads)) + ", "
                    + Mm.rounded(plan.cents() / 100.0, 2) + " " + power.currency());
        });
        power.shortfall().ifPresent(s -> out.add(InspectWiringLines.missing(s)));
        return out;
    }
}
