package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loopwright.answer.FitAnswer;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import loopwright.fit.FoundLayout;
import loopwright.fit.Layout;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.fit.UnknownLayout;
import loopwright.fit.Witness;
import loopwright.quantity.IntervalSet;

/** Layouts, stacks and ways to have them as ordered maps, the names as the JSON has them. */
final class FitRows {

    private final FitAnswer answer;
    private final StackLayers layers;

    FitRows(FitAnswer answer) {
        this.answer = answer;
        this.layers = new StackLayers(answer.fitCase());
    }

    Map<String, Object> layout(FoundLayout found) {
        Layout layout = found.layout();
        ModSet smallest = found.needed().get(0);
        List<Object> sets = new ArrayList<>();
        Map<String, Object> tightest = Map.of();
        Map<String, Object> sure = Json.object();
        for (ModSet mods : found.needed()) {
            Witness witness = answer.witness(layout, mods);
            if (sets.isEmpty()) {
                tightest = ChanceWords.gap(witness.tightest());
                ChanceWords.put(sure, witness, answer.fitCase().brief());
            }
            sets.add(modSet(layout, witness, sets.isEmpty() ? sure : sure(witness)));
        }
        Map<String, Object> out = Json.object();
        out.put("key", layout.key());
        out.put("stacks", stacks(layout, smallest));
        out.put("mod_sets", sets);
        out.put("tightest", tightest);
        out.put("conductance_W_per_K", Mm.rounded(answer.conductanceWPerK(layout, smallest), 2));
        out.putAll(sure);
        return out;
    }

    Map<String, Object> unknown(UnknownLayout unknown) {
        Map<String, Object> out = Json.object();
        out.put("key", unknown.layout().key());
        out.put("stacks", unknown.layout().stacks().stream().map(this::stack).toList());
        out.put("measure", unknown.measure());
        out.put("fit_probability", Json.NOTHING);
        return out;
    }

    private List<Object> stacks(Layout layout, ModSet mods) {
        List<Object> out = new ArrayList<>();
        for (Stack stack : layout.stacks()) {
            Map<String, Object> one = stack(stack);
            one.put(
                    "layers",
                    layers.of(stack, mods).stream().map(FitRows::layer).toList());
            out.add(one);
        }
        return out;
    }

    private Map<String, Object> stack(Stack stack) {
        Map<String, Object> out = Json.object();
        out.put("mount", stack.frame().mount().id());
        out.put("face", StackWords.face(stack));
        out.put("pattern", stack.shape().pattern().toString());
        out.put("radiator_thickness_mm", Mm.number(stack.shape().thicknessHmm()));
        out.put("fan_thickness_mm", Mm.number(stack.shape().fanThickness().valueHmm()));
        out.put("arrangement", stack.shape().arrangement().word());
        out.put("port_end", StackWords.portEnd(stack));
        out.put(
                "radiators",
                answer.fitCase().shapes().radiatorsOf(stack.shape()).stream()
                        .map(Radiator::id)
                        .toList());
        out.put(
                "fans",
                answer.fitCase().shapes().fansOf(stack.shape()).stream()
                        .map(Fan::id)
                        .toList());
        return out;
    }

    private static Map<String, Object> layer(StackLayers.Layer layer) {
        Map<String, Object> out = Json.object();
        out.put("layer", layer.name());
        out.put("at", JsonWords.of(layer.at()));
        out.put("thickness_mm", Mm.number(layer.thicknessHmm()));
        out.put("state", layer.isThere() ? "present" : "cut-away");
        out.put("hold", JsonWords.of(layer.hold()));
        out.put("shared_bolt", layer.sharesBolts());
        return out;
    }

    private Map<String, Object> sure(Witness witness) {
        Map<String, Object> out = Json.object();
        ChanceWords.put(out, witness, answer.fitCase().brief());
        return out;
    }

    private Map<String, Object> modSet(Layout layout, Witness witness, Map<String, Object> sure) {
        Map<String, Object> inside = Json.object();
        List<Object> places = new ArrayList<>();
        for (Witness.InPlace part : witness.places()) {
            Map<String, Object> place = Json.object();
            place.put("what", part.what());
            place.put("part", part.partId());
            place.put("place", part.place());
            places.add(place);
        }
        inside.put("places", places);
        inside.put("stacks", witness.stacks().stream().map(FitRows::at).toList());
        inside.put("tightest", ChanceWords.gap(witness.tightest()));
        inside.put("conductance_W_per_K", Mm.rounded(answer.conductanceWPerK(layout, witness.mods()), 2));
        inside.putAll(sure);
        Map<String, Object> out = Json.object();
        out.put("mods", witness.mods().ids(answer.fitCase().chassis()));
        out.put("witness", inside);
        if (answer.isAboutOneLayout()) {
            out.put("room_left", RoomWords.rows(answer.roomLeft(witness)));
        }
        return out;
    }

    private static Map<String, Object> at(Witness.At at) {
        Map<String, Object> out = Json.object();
        out.put("mount", at.stack().frame().mount().id());
        out.put("lengthwise_axis", JsonWords.of(at.stack().frame().lengthwise()));
        out.put("lengthwise_mm", Mm.number(at.alongHmm()));
        out.put("lengthwise_slide_mm", slide(at.alongSlide()));
        out.put("sideways_axis", JsonWords.of(at.stack().frame().sideways()));
        out.put("sideways_mm", Mm.number(at.asideHmm()));
        out.put("sideways_slide_mm", slide(at.asideSlide()));
        return out;
    }

    private static List<Object> slide(IntervalSet set) {
        List<Object> out = new ArrayList<>();
        set.intervals().forEach(i -> out.add(List.of(Mm.number(i.from()), Mm.number(i.to()))));
        return out;
    }
}
