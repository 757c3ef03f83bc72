package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loopwright.answer.Flips;
import loopwright.answer.Flips.Hung;
import loopwright.answer.WhatIfAnswer;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.measure.Contradiction;
import loopwright.catalog.measure.Replacement;
import loopwright.catalog.measure.Taken;
import loopwright.fit.ClashFinder.Clash;
import loopwright.fit.Gap;
import loopwright.fit.Layout;
import loopwright.fit.ModSet;
import loopwright.quantity.Dimension;

/** What readings and assumptions change in one chassis, for programs: the {@code overrides} of its answer. */
final class WhatIfJson {

    private WhatIfJson() {}

    static Map<String, Object> object(WhatIfAnswer answer) {
        Chassis chassis = answer.fitCase().chassis();
        Flips flips = answer.flips();
        Map<String, Object> out = Json.object();
        out.put(
                "applied",
                answer.whatIf().applied().stream().map(WhatIfJson::applied).toList());
        out.put(
                "contradictions",
                answer.whatIf().contradictions().stream()
                        .map(WhatIfJson::contradiction)
                        .toList());
        out.put("notes", answer.whatIf().notes());
        out.put("died", flips.died().stream().map(d -> died(d, chassis)).toList());
        out.put("alive", flips.alive().stream().map(a -> alive(a, chassis)).toList());
        out.put(
                "verdicts",
                flips.verdicts().stream().map(c -> changed(c, chassis)).toList());
        out.put(
                "other_mods",
                flips.otherMods().stream().map(c -> changed(c, chassis)).toList());
        out.put("unknown", flips.doubts().stream().map(WhatIfJson::doubt).toList());
        out.put("same", flips.same());
        out.put("complete", flips.incompleteBecause().isEmpty());
        flips.incompleteBecause().ifPresent(b -> out.put("incomplete_because", b));
        return out;
    }

    private static Map<String, Object> applied(Replacement one) {
        Map<String, Object> out = Json.object();
        out.put("address", one.address());
        out.put("from", dimension(one.from()));
        out.put("to", dimension(one.to()));
        out.put("by", one.by());
        return out;
    }

    private static Map<String, Object> dimension(Dimension dimension) {
        Map<String, Object> out = Json.object();
        out.put("value_mm", dimension.isUnknown() ? Json.NOTHING : Mm.number(dimension.valueHmm()));
        out.put("plus_minus_mm", dimension.isUnknown() ? Json.NOTHING : Mm.number(dimension.plusMinusHmm()));
        out.put("known", JsonWords.of(dimension.known()));
        return out;
    }

    private static Map<String, Object> contradiction(Contradiction one) {
        Map<String, Object> out = Json.object();
        out.put("address", one.length().address());
        out.put("readings", List.of(taken(one.one()), taken(one.other())));
        out.put("difference_mm", Mm.number(one.differenceHmm()));
        out.put("stays", dimension(one.length().dimension()));
        out.put("sentence", one.sentence());
        return out;
    }

    private static Map<String, Object> taken(Taken taken) {
        Map<String, Object> out = Json.object();
        out.put("value_mm", Mm.number(taken.valueHmm()));
        out.put("plus_minus_mm", Mm.number(taken.plusMinusHmm()));
        out.put("instrument", taken.instrument());
        out.put("date", taken.date().toString());
        out.put("place", taken.place());
        return out;
    }

    private static Map<String, Object> died(Flips.Died died, Chassis chassis) {
        Map<String, Object> out = layout(died.layout(), died.only());
        out.put("mods", mods(died.mods(), chassis));
        Clash clash = died.clash();
        out.put("clash", clash.gap().map(g -> (Object) gap(g)).orElse(Json.NOTHING));
        if (clash.gap().isEmpty()) {
            out.put("why", clash.why());
        }
        return out;
    }

    private static Map<String, Object> alive(Flips.Alive alive, Chassis chassis) {
        Map<String, Object> out = layout(alive.layout(), alive.only());
        out.put("mods", mods(alive.mods(), chassis));
        out.put("tightest", gap(alive.tightest()));
        return out;
    }

    private static Map<String, Object> changed(Flips.Changed changed, Chassis chassis) {
        Map<String, Object> out = layout(changed.is().layout(), changed.only());
        out.put("key_before", changed.was().layout().key());
        out.put("mods_before", mods(changed.was().mods(), chassis));
        out.put("mods_after", mods(changed.is().mods(), chassis));
        out.put("before", gap(changed.was().tightest()));
        out.put("after", gap(changed.is().tightest()));
        return out;
    }

    private static Map<String, Object> doubt(Flips.Doubt doubt) {
        Map<String, Object> out = layout(doubt.layout(), doubt.only());
        out.put("from", JsonWords.of(doubt.was()));
        out.put("to", JsonWords.of(doubt.is()));
        out.put("measure", doubt.measure());
        return out;
    }

    private static Map<String, Object> layout(Layout layout, List<Hung> only) {
        Map<String, Object> out = Json.object();
        out.put("key", layout.key());
        out.put("stacks", layout.stacks().stream().map(StackWords::full).toList());
        if (!only.isEmpty()) {
            Map<String, Object> radiators = Json.object();
            only.forEach(h -> radiators.put(h.mount(), h.radiators()));
            out.put("only_radiators", radiators);
        }
        return out;
    }

    private static List<String> mods(ModSet mods, Chassis chassis) {
        return new ArrayList<>(mods.ids(chassis));
    }

    private static Map<String, Object> gap(Gap gap) {
        Map<String, Object> out = Json.object();
        out.put("margin_mm", Mm.number(gap.marginHmm()));
        out.put("clearance_mm", Mm.number(gap.clearanceHmm()));
        out.put("need_mm", Mm.number(gap.needHmm()));
        out.put("between", List.of(gap.one(), gap.other()));
        out.put("verdict", JsonWords.of(gap.verdict()));
        return out;
    }
}
