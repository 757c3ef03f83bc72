package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.answer.DrivePlaces;
import loopwright.answer.UnlockAnswer;
import loopwright.answer.UnlockState;
import loopwright.answer.Unlocks.AtMount;
import loopwright.answer.Unlocks.Combination;
import loopwright.answer.Unlocks.Gain;
import loopwright.answer.Unlocks.Impossible;
import loopwright.answer.Unlocks.RadiatorClass;
import loopwright.answer.Unlocks.Unlocked;
import loopwright.answer.Unlocks.Way;
import loopwright.catalog.chassis.Chassis;
import loopwright.fit.Layout.Stack;
import loopwright.loop.Band;
import loopwright.rank.ModBill;

/** Mounts, ways and combinations as ordered maps, the names as the JSON has them; an absent figure is null. */
final class UnlockRows {

    private final UnlockAnswer answer;
    private final Chassis chassis;

    UnlockRows(UnlockAnswer answer) {
        this.answer = answer;
        this.chassis = answer.fitCase().chassis();
    }

    Map<String, Object> mount(AtMount at) {
        Map<String, Object> out = Json.object();
        out.put("mount", at.frame().mount().id());
        out.put("face", JsonWords.of(at.frame().panel().face()));
        out.put("as_delivered", at.asDelivered().stream().map(UnlockRows::stack).toList());
        out.put("unlocked", at.unlocked().stream().map(this::unlocked).toList());
        List<Object> impossible = new ArrayList<>();
        List<Object> unknown = new ArrayList<>();
        for (Impossible each : at.impossible()) {
            if (answer.state(at.frame(), each) == UnlockState.IMPOSSIBLE) {
                impossible.add(impossible(each));
            } else {
                unknown.add(unknown(at, each));
            }
        }
        out.put("impossible", impossible);
        out.put("unknown", unknown);
        return out;
    }

    /** A figure, or null. */
    static Object orNull(OptionalDouble value, int decimals) {
        return value.isPresent() ? Mm.rounded(value.getAsDouble(), decimals) : Json.NOTHING;
    }

    static Object bandOrNull(Optional<Band> band) {
        return band.<Object>map(b -> List.of(Mm.rounded(b.lowK(), 2), Mm.rounded(b.highK(), 2)))
                .orElse(Json.NOTHING);
    }

    /** A radiator class. */
    static Map<String, Object> stack(RadiatorClass radiator) {
        Map<String, Object> out = Json.object();
        out.put("pattern", radiator.pattern().toString());
        out.put("radiator_thickness_mm", Mm.number(radiator.thicknessHmm()));
        return out;
    }

    private Map<String, Object> unlocked(Unlocked unlocked) {
        Way cheapest = unlocked.ways().get(0);
        Map<String, Object> out = Json.object();
        out.put("stack", stack(unlocked.stack()));
        out.put("mod_sets", unlocked.ways().stream().map(this::way).toList());
        out.put("labour_min", cheapest.bill().labourMin());
        out.put("cost_cents", cheapest.costCents());
        putGain(out, cheapest.gain());
        return out;
    }

    /** Every way to have one layout; no mod sets when no layout with that key fits. */
    Map<String, Object> layout(String key, List<Way> ways) {
        Map<String, Object> out = Json.object();
        out.put("key", key);
        out.put("mod_sets", ways.stream().map(this::way).toList());
        return out;
    }

    private Map<String, Object> way(Way way) {
        Map<String, Object> out = Json.object();
        out.put("mods", way.mods().ids(chassis));
        putBill(out, way.bill());
        out.put(
                "drive_places",
                DriveWords.row(DrivePlaces.of(chassis, way.mods().mods(chassis))));
        out.put("days", way.days());
        out.put("cost_cents", way.costCents());
        out.put("height_added_mm", Mm.number(way.bill().heightAddedHmm()));
        putGain(out, way.gain());
        out.put(
                "conductance_gain_W_per_K",
                way.gain()
                        .<Object>map(g -> Mm.rounded(g.conductanceGainWPerK(), 2))
                        .orElse(Json.NOTHING));
        out.put("best_layout", way.best().layout().layout().key());
        out.put(
                "arrangements",
                way.stacks().stream().map(UnlockRows::arrangement).toList());
        return out;
    }

    private static void putBill(Map<String, Object> out, ModBill bill) {
        out.put("labour_min", bill.labourMin());
        out.put("paint_min", bill.paintMin());
        out.put("material_cents", bill.materialCents());
        out.put("visible_cuts", bill.visibleCuts());
        out.put("hidden_cuts", bill.hiddenCuts());
        out.put("way_back", JsonWords.of(bill.wayBack()));
    }

    private static void putGain(Map<String, Object> out, Optional<Gain> gain) {
        out.put(
                "coolant_gain_K",
                gain.<Object>map(g -> Mm.rounded(g.gainK(), 2)).orElse(Json.NOTHING));
        out.put("coolant_gain_band_K", bandOrNull(gain.map(Gain::band)));
    }

    private static Map<String, Object> arrangement(Stack stack) {
        Map<String, Object> out = Json.object();
        out.put("arrangement", stack.shape().arrangement().word());
        out.put("fans", StackWords.fans(stack));
        out.put("fan_thickness_mm", Mm.number(stack.shape().fanThickness().valueHmm()));
        return out;
    }

    private Map<String, Object> impossible(Impossible each) {
        Map<String, Object> out = Json.object();
        out.put("stack", stack(each.stack()));
        out.put(
                "shortfall_mm",
                each.shortfall().shortfallHmm().<Object>map(Mm::number).orElse(Json.NOTHING));
        out.put("blocked_by", each.shortfall().blockedBy());
        out.put("nearest_with", each.shortfall().mods().ids(chassis));
        return out;
    }

    private Map<String, Object> unknown(AtMount at, Impossible each) {
        Map<String, Object> out = Json.object();
        out.put("stack", stack(each.stack()));
        out.put("measure", answer.toMeasure(at.frame(), each.stack()));
        return out;
    }

    Map<String, Object> combination(Combination each) {
        Map<String, Object> out = Json.object();
        out.put("key", each.layout().layout().key());
        out.put(
                "stacks",
                each.layout().layout().stacks().stream().map(StackWords::full).toList());
        out.put("mods", each.mods().ids(chassis));
        out.put("conductance_W_per_K", Mm.rounded(each.conductanceWPerK(), 2));
        out.put("coolant_over_room_K", orNull(answer.overRoomK(each), 2));
        out.put("coolant_over_room_band_K", bandOrNull(answer.overRoomBand(each)));
        putBill(out, each.bill());
        out.put("cost_cents", each.costCents());
        return out;
    }
}
