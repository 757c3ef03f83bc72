package loopwright.paper;

import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loopwright.answer.Checklist;
import loopwright.answer.InspectAnswer;
import loopwright.answer.Inspection;
import loopwright.answer.NextSteps;
import loopwright.loop.Steady;
import loopwright.quantity.Units;

/** One build in full, for programs. */
public final class InspectJson implements InspectPaper {

    private final Json json;
    private final JsonAnswers answers;

    /** Writes to a writer. */
    public InspectJson(Writer out, Origin origin) {
        this.json = new Json(out);
        this.answers = new JsonAnswers(json, origin, "loopwright/inspect/1");
    }

    @Override
    public void write(InspectAnswer answer) {
        Inspection in = answer.inspection();
        answers.begin();
        answers.open(in.fitCase().chassis().id());
        json.put("complete", true);
        json.put("key", in.build().key());
        json.put("layout", in.build().layout().key());
        json.put("parts", in.build().parts());
        json.put("mods", in.build().modIds());
        json.put("cost_cents", in.build().outcome().priceCents());
        json.put("currency", in.fitCase().brief().terms().currency());
        json.put("labour_min", in.build().outcome().labourMin());
        json.put("days", in.build().outcome().days());
        Map<String, Object> sure = Json.object();
        ChanceWords.put(sure, in.witness(), in.fitCase().brief());
        sure.forEach(json::put);
        json.put("checklist", checklist(in));
        json.put("clearances", clearances(in));
        json.put("room_left", RoomWords.rows(in.roomLeft()));
        json.put("temperatures", temperatures(in));
        json.put("rooms", rooms(answer));
        air(in);
        json.put("radiators", radiators(in));
        json.put("loop", loop(in));
        json.put("sound", sounds(in));
        json.put("power", InspectPowerJson.of(in.powering()));
        json.put("uncertain_inputs", doubts(in));
        InspectStudyJson.put(json, answer);
        json.put("next_steps", steps(answer));
        json.close();
        answers.end();
    }

    @Override
    public void nothing(String why) {
        answers.nothing(why);
    }

    @Override
    public void stopped(String why) {
        answers.stopped(why);
    }

    private static List<Map<String, Object>> checklist(Inspection in) {
        List<Map<String, Object>> out = new ArrayList<>();
        for (Checklist.Line line : Checklist.of(in)) {
            Map<String, Object> one = Json.object();
            one.put("line", line.line());
            one.put("wanted", line.wanted());
            one.put("given", line.given());
            one.put(
                    "margin",
                    line.margin().isPresent() ? Mm.rounded(line.margin().getAsDouble(), 2) : Json.NOTHING);
            one.put("kept", JsonWords.of(line.kept()));
            out.add(one);
        }
        return out;
    }

    private static List<Map<String, Object>> clearances(Inspection in) {
        return in.witness().gaps().stream().map(ChanceWords::gap).toList();
    }

    private static List<Map<String, Object>> temperatures(Inspection in) {
        List<Map<String, Object>> out = new ArrayList<>();
        out.add(temperature(
                "coolant", in.state().water().meanC(), in.coolantBand().halfK()));
        in.junctions().forEach(h -> out.add(temperature(h.name(), h.temperatureC(), h.plusMinusK())));
        out.add(temperature("air inside", in.state().caseC(), in.caseBand().halfK()));
        return out;
    }

    private static Map<String, Object> temperature(String name, double celsius, double plusMinusK) {
        Map<String, Object> one = Json.object();
        one.put("of", name);
        one.put("temperature_C", Mm.rounded(celsius, 2));
        one.put("plus_minus_K", Mm.rounded(plusMinusK, 2));
        return one;
    }

    private static List<Map<String, Object>> rooms(InspectAnswer answer) {
        List<Map<String, Object>> out = new ArrayList<>();
        answer.rooms().forEach(r -> {
            Map<String, Object> one = Json.object();
            one.put("room_C", Mm.rounded(r.roomC(), 1));
            one.put("coolant_C", Mm.rounded(r.coolantC(), 2));
            one.put("coolant_plus_minus_K", Mm.rounded(r.coolantK(), 2));
            one.put("case_C", Mm.rounded(r.caseC(), 2));
            one.put("case_plus_minus_K", Mm.rounded(r.caseK(), 2));
            out.add(one);
        });
        return out;
    }

    private void air(Inspection in) {
        List<Map<String, Object>> mounts = new ArrayList<>();
        for (Inspection.MountFlow flow : in.airflows()) {
            Map<String, Object> one = Json.object();
            one.put("mount", flow.mount().mount());
            one.put("blows", JsonWords.of(flow.mount().direction()));
            one.put("fan", flow.mount().fans().fan().id());
            one.put("fans", flow.mount().fans().row() * flow.mount().fans().layers());
            one.put("duty_percent", Mm.rounded(flow.mount().fans().duty().percent(), 0));
            one.put("airflow_m3_per_h", Mm.rounded(flow.flowM3PerH(), 2));
            one.put("fan_Pa", Mm.rounded(flow.fanPa(), 3));
            one.put("path_Pa", Mm.rounded(flow.pathPa(), 3));
            one.put("core_Pa", Mm.rounded(flow.corePa(), 3));
            one.put("stalls", flow.stalls());
            mounts.add(one);
        }
        json.put("air", mounts);
        Map<String, Object> balance = Json.object();
        balance.put("fans_in_m3_per_h", Mm.rounded(Units.m3PerH(in.state().air().fanInM3PerS()), 2));
        balance.put(
                "fans_out_m3_per_h", Mm.rounded(Units.m3PerH(in.state().air().fanOutM3PerS()), 2));
        balance.put("inside_Pa", Mm.rounded(in.state().air().insidePa(), 4));
        Map<String, Object> vents = Json.object();
        in.vents().forEach(v -> vents.put(v.name(), Mm.rounded(v.outM3PerH(), 2)));
        balance.put("openings_out_m3_per_h", vents);
        json.put("air_balance", balance);
    }

    private static List<Map<String, Object>> radiators(Inspection in) {
        List<Map<String, Object>> out = new ArrayList<>();
        for (Steady.RadiatorState radiator : in.state().radiators()) {
            Map<String, Object> one = Json.object();
            one.put("radiator", radiator.name());
            one.put("effectiveness", Mm.rounded(radiator.effectiveness(), 4));
            one.put("UA_W_per_K", Mm.rounded(radiator.conductanceUAWPerK(), 2));
            one.put("conductance_W_per_K", Mm.rounded(radiator.meanConductanceWPerK(), 2));
            one.put("heat_W", Mm.rounded(radiator.heatW(), 2));
            one.put("air_in_C", Mm.rounded(radiator.inletC(), 2));
            one.put("air_out_C", Mm.rounded(radiator.outletC(), 2));
            out.add(one);
        }
        return out;
    }

    private static List<Map<String, Object>> loop(Inspection in) {
        List<Map<String, Object>> out = new ArrayList<>();
        for (Steady.Stop stop : in.state().stops()) {
            Map<String, Object> one = Json.object();
            one.put("at", stop.name());
            one.put("flow_L_per_min", Mm.rounded(Units.lPerMin(stop.flowM3PerS()), 3));
            one.put("loss_kPa", Mm.rounded(stop.lossPa() / Units.PA_PER_KPA, 3));
            one.put("in_C", Mm.rounded(stop.inC(), 3));
            one.put("out_C", Mm.rounded(stop.outC(), 3));
            out.add(one);
        }
        return out;
    }

    private static List<Map<String, Object>> sounds(Inspection in) {
        List<Map<String, Object>> out = new ArrayList<>();
        for (Inspection.Source source : in.sounds()) {
            Map<String, Object> one = Json.object();
            one.put("source", source.name());
            one.put("level_dBA", Mm.rounded(source.levelDBA(), 1));
            out.add(one);
        }
        return out;
    }

    private static Map<String, Object> doubts(Inspection in) {
        Map<String, Object> out = Json.object();
        in.doubts().forEach(d -> out.put(d.getKey(), Mm.rounded(d.getValue(), 3)));
        return out;
    }

    private static List<Map<String, Object>> steps(InspectAnswer answer) {
        List<Map<String, Object>> out = new ArrayList<>();
        for (NextSteps.Step step : answer.steps().all()) {
            Map<String, Object> one = Json.object();
            one.put("kind", JsonWords.of(step.kind()));
            one.put("change", step.what());
            one.put("key", step.build().key());
            one.put("coolant_gain_K", Mm.rounded(step.gainK(), 2));
            one.put(
                    "coolant_gain_band_K",
                    List.of(
                            Mm.rounded(step.gainBand().lowK(), 2),
                            Mm.rounded(step.gainBand().highK(), 2)));
            one.put("cost_cents", step.costCents());
            one.put("labour_min", step.labourMin());
            one.put("noise_dB", Mm.rounded(step.noiseDB(), 1));
            out.add(one);
        }
        return out;
    }
}
