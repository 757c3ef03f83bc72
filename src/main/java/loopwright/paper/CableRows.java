package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.answer.InspectAnswer;
import loopwright.answer.cable.CablePlan;
import loopwright.answer.cable.CablePlan.CableUse;
import loopwright.answer.cable.CablePlan.Feed;
import loopwright.answer.cable.CablePlan.HoleUse;
import loopwright.answer.cable.DriveList;
import loopwright.catalog.part.Lead;
import loopwright.catalog.part.Screw;
import loopwright.power.cable.LeadChoice;

/** Cables and drives of a build as ordered maps, for programs; an absent figure is null. */
final class CableRows {

    private CableRows() {}

    /** The cables; null where nothing is known of them. */
    static Object cables(InspectAnswer answer) {
        return answer.cables().<Object>map(CableRows::plan).orElse(Json.NOTHING);
    }

    private static Map<String, Object> plan(CablePlan plan) {
        Map<String, Object> out = Json.object();
        out.put("feeds", plan.feeds().stream().map(CableRows::feed).toList());
        out.put("leads_cents", plan.leadsCents());
        out.put("supply_cables", plan.cables().stream().map(CableRows::use).toList());
        out.put("holes", plan.holes().stream().map(CableRows::hole).toList());
        out.put(
                "behind_tray_mm",
                plan.room().behindTrayHmm().<Object>map(Mm::number).orElse(Json.NOTHING));
        out.put("behind_tray_flat_only", plan.room().flatOnly());
        out.put("behind_tray_too_thick", plan.room().tooThick());
        out.put("left_over_L", Mm.rounded(plan.leftL(), 3));
        out.put("parking_free_L", Mm.rounded(plan.room().freeL(), 3));
        out.put("sixteen_pin", plan.straight().<Object>map(CableRows::straight).orElse(Json.NOTHING));
        return out;
    }

    private static Map<String, Object> feed(Feed feed) {
        Map<String, Object> out = Json.object();
        out.put("plug", JsonWords.of(feed.plug()));
        out.put("to", feed.to());
        out.put("cable", feed.cable().<Object>map(n -> n).orElse(Json.NOTHING));
        out.put("on_from", feed.way().after().<Object>map(a -> a).orElse(Json.NOTHING));
        out.put("way_mm", Mm.number(feed.way().lengthHmm()));
        out.put("way_open", feed.way().open());
        out.put("holes", feed.way().holes());
        out.put("wanted_mm", feed.wantedMm());
        out.put("has_mm", feed.hasMm());
        out.put("verdict", JsonWords.of(feed.verdict()));
        out.put("lacks_mm", feed.lacksMm());
        Optional<LeadChoice> cure = feed.cure();
        out.put(
                "leads",
                cure.map(c -> c.leads().stream().map(Lead::id).toList()).orElse(List.of()));
        out.put("leads_cents", cure.map(LeadChoice::priceCents).orElse(0L));
        return out;
    }

    private static Map<String, Object> use(CableUse use) {
        Map<String, Object> out = Json.object();
        out.put("number", use.number());
        out.put("plug", JsonWords.of(use.plug()));
        out.put("fixed", use.fixed());
        out.put("feeds", use.feeds());
        out.put("left_over_mm", use.leftMm());
        out.put("left_over_L", Mm.rounded(use.leftL(), 3));
        out.put(
                "sleeving",
                use.sleeving()
                        .<Object>map(s -> {
                            Map<String, Object> one = Json.object();
                            one.put("wires", s.conductors());
                            one.put("cord_m", Mm.rounded(s.cordM(), 2));
                            one.put("heat_shrinks", s.shrinks());
                            return one;
                        })
                        .orElse(Json.NOTHING));
        return out;
    }

    private static Map<String, Object> hole(HoleUse use) {
        Map<String, Object> out = Json.object();
        out.put("hole", use.hole().id());
        out.put("cables", use.cables());
        out.put("fill_share", Mm.rounded(use.fillShare(), 3));
        out.put("crowded", use.crowded());
        return out;
    }

    private static Map<String, Object> straight(CablePlan.Straight straight) {
        Map<String, Object> out = Json.object();
        out.put("free_mm", Mm.number(straight.freeHmm()));
        out.put("straight_mm", Mm.number(straight.straightHmm()));
        out.put("plug_mm", Mm.number(straight.plugHmm()));
        out.put("verdict", JsonWords.of(straight.verdict()));
        return out;
    }

    /** The drives and their places. */
    static Map<String, Object> drives(InspectAnswer answer) {
        DriveList list = answer.drives();
        List<Object> placed = new ArrayList<>();
        for (DriveList.Line line : list.drives()) {
            Map<String, Object> one = Json.object();
            one.put("drive", line.drive().id());
            one.put("place", line.place().id());
            one.put("made_by", line.madeBy().<Object>map(m -> m).orElse(Json.NOTHING));
            one.put(
                    "screws",
                    line.screwing().<Object>map(DriveList.Screwing::screws).orElse(Json.NOTHING));
            one.put(
                    "screw_longest_mm",
                    line.screwing()
                            .<Object>map(s -> Mm.rounded(s.longestMm(), 2))
                            .orElse(Json.NOTHING));
            one.put(
                    "screw",
                    line.screwing()
                            .flatMap(DriveList.Screwing::screw)
                            .<Object>map(Screw::id)
                            .orElse(Json.NOTHING));
            one.put("heat", JsonWords.of(line.heat()));
            one.put("hum", JsonWords.of(line.hum()));
            one.put("data_lead_mm", line.dataMm().<Object>map(n -> n).orElse(Json.NOTHING));
            placed.add(one);
        }
        Map<String, Object> out = Json.object();
        out.put("placed", placed);
        out.put("on_board", list.onBoard());
        out.put("places", DriveWords.row(list.places()));
        return out;
    }
}
