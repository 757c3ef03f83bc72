package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loopwright.answer.Powering;
import loopwright.catalog.part.Lead;
import loopwright.power.LoadParts;
import loopwright.power.RailBudget;
import loopwright.power.Surge;
import loopwright.power.header.WiringPlan;

/** The electrics of a build, for programs. */
final class InspectPowerJson {

    private static final double MILLI = 1000;

    private InspectPowerJson() {}

    static Map<String, Object> of(Powering power) {
        Map<String, Object> out = Json.object();
        out.put("supply", power.supply().id());
        out.put("rails", rails(power));
        out.put("loads", loads(power));
        Surge surge = power.surge();
        Map<String, Object> burst = Json.object();
        burst.put("card_W", Mm.rounded(Surge.watts(surge.cardScaled()), 2));
        burst.put("processor_W", Mm.rounded(Surge.watts(surge.processorScaled()), 2));
        burst.put("rest_W", Mm.rounded(Surge.watts(surge.restScaled()), 2));
        burst.put("stood_W", power.stoodW().<Object>map(w -> Mm.rounded(w, 2)).orElse(Json.NOTHING));
        out.put("surge", burst);
        List<Map<String, Object>> plugs = new ArrayList<>();
        power.connectors().forEach(c -> {
            Map<String, Object> one = Json.object();
            one.put("plug", c.name());
            one.put("wanted", c.wanted());
            one.put("there", c.there());
            plugs.add(one);
        });
        out.put("plugs", plugs);
        out.put("wiring", power.wiring().<Object>map(p -> wiring(power, p)).orElse(Json.NOTHING));
        out.put(
                "missing",
                power.shortfall().<Object>map(InspectWiringLines::missing).orElse(Json.NOTHING));
        return out;
    }

    private static List<Map<String, Object>> rails(Powering power) {
        List<Map<String, Object>> out = new ArrayList<>();
        for (String name : List.of("12V", "low")) {
            Map<String, Object> one = Json.object();
            one.put("rail", name);
            power.budgets()
                    .forEach((state, budget) -> one.put(JsonWords.of(state) + "_W", watts(budget, name.equals("low"))));
            one.put(
                    "there_W",
                    power.capacity()
                            .<Object>map(c -> watts(c, name.equals("low")))
                            .orElse(Json.NOTHING));
            out.add(one);
        }
        return out;
    }

    private static Object watts(RailBudget budget, boolean low) {
        return Mm.rounded(LoadParts.watts(low ? budget.lowMilliW() : budget.twelveMilliW()), 2);
    }

    private static List<Map<String, Object>> loads(Powering power) {
        List<Map<String, Object>> out = new ArrayList<>();
        for (Powering.AtLoad at : power.atLoads()) {
            Map<String, Object> one = Json.object();
            one.put("state", JsonWords.of(at.state()));
            one.put("load_W", Mm.rounded(at.loadW(), 2));
            one.put("load_percent", Mm.rounded(at.loadPercent(), 1));
            one.put("efficiency_percent", Mm.rounded(at.efficiencyPercent(), 2));
            one.put("mains_W", Mm.rounded(at.mainsW(), 2));
            one.put("heat_W", Mm.rounded(at.heatW(), 2));
            one.put("noise_dBA", Mm.rounded(at.noiseDBA(), 1));
            out.add(one);
        }
        return out;
    }

    private static Map<String, Object> wiring(Powering power, WiringPlan plan) {
        Map<String, Object> out = Json.object();
        List<Map<String, Object>> headers = new ArrayList<>();
        for (WiringPlan.Branch branch : plan.branches()) {
            Map<String, Object> one = Json.object();
            one.put("header", branch.header().id());
            one.put("feeds", InspectWiringLines.fans(power, branch));
            one.put("lead", branch.lead().<Object>map(Lead::id).orElse(Json.NOTHING));
            one.put("start_A", Mm.rounded(branch.startMilliA() / MILLI, 3));
            one.put("limit_A", Mm.rounded(branch.limitMilliA() / MILLI, 3));
            headers.add(one);
        }
        out.put("headers", headers);
        plan.pump().ifPresent(p -> {
            Map<String, Object> one = Json.object();
            one.put("pump", p.feed().pump());
            one.put("header", p.header().id());
            one.put("fed_by", JsonWords.of(p.feed().way()));
            one.put("start_A", Mm.rounded(p.feed().startMilliA() / MILLI, 3));
            out.put("pump", one);
        });
        out.put("leads", plan.leads().stream().map(Lead::id).sorted().toList());
        out.put("leads_cents", plan.cents());
        return out;
    }
}
