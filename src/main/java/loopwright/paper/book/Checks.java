package loopwright.paper.book;

import java.util.ArrayList;
import java.util.List;
import loopwright.answer.Inspection;
import loopwright.catalog.part.Coolant;
import loopwright.fit.Gap;
import loopwright.paper.Mm;
import loopwright.quantity.Units;

/**
 * Lists to tick at the bench: both dry fits, leak test, test sheet, care.
 *
 * <p>Pressures and times: common practice, no source; the makers' sheets come first.
 */
final class Checks {

    /** Gaps that are looked at again by hand: the tightest. */
    private static final int GAPS = 10;

    private Checks() {}

    static List<String> beforeCutting(Inspection in) {
        List<String> out = new ArrayList<>(List.of(
                "Supply unplugged, a minute waited, and out of the case; no electronics in reach of swarf.",
                "Every part that touches a tight place is here and measured, or stands there as a card dummy.",
                "Everything is in at once: radiators, fans, card with its plugs, memory with latches open, supply with"
                        + " cables and their bends.",
                "Each tube run laid with a piece of tube or string: no kink, no fan, no sharp edge.",
                "Each fitting can be turned by hand; each screw that comes later can be reached with its driver.",
                "The client has seen and signed what will show."));
        out.addAll(gaps(in));
        return out;
    }

    static List<String> beforePaint(Inspection in) {
        List<String> out = new ArrayList<>(List.of(
                "All cuts and holes made, deburred, wiped; nothing left to cut on any part that goes to paint.",
                "Everything in again, with the final screws: each length held against its window by hand, none bottoms.",
                "Film comes on top: slots and press fits have the room for it.",
                "Earth points, threads and contact faces are marked for masking.",
                "Panels close without force; doors swing; nothing rattles."));
        out.addAll(gaps(in));
        return out;
    }

    private static List<String> gaps(Inspection in) {
        List<String> out = new ArrayList<>();
        for (Gap gap : in.witness().gaps().stream().limit(GAPS).toList()) {
            out.add("Gap " + gap.one() + " to " + gap.other() + ": planned " + Mm.text(gap.clearanceHmm())
                    + " mm (needs " + Mm.text(gap.needHmm()) + "), measured ________ mm");
        }
        return out;
    }

    static List<String> leakTest() {
        return List.of(
                "Board and card are NOT connected: only the pump gets power, from a made starter plug or a certified"
                        + " 12 V source.",
                "Air: 0.3 to 0.5 bar over the room's (tanks of glass or acrylic at most 0.3, or what their maker says)."
                        + " Start ________ bar at ________ C.",
                "After 15 to 30 min: ________ bar at ________ C. Passed if it lost at most 0.02 bar; 1 K makes about"
                        + " 5 mbar of that.",
                "Fill in steps, pump off between; never run it dry.",
                "Tissues under every joint; first 4 h attended, tilted 20 to 30 degrees each way in the first hour.",
                "12 to 24 h with the pump alone: every tissue dry. From ________ to ________, by ________.");
    }

    /** What is measured at handover, beside what was computed. */
    static Rows testSheet(Inspection in) {
        Rows rows = Rows.headed("at full load, after it has settled", "computed", "measured", "date, by");
        rows.row("room, C", Mm.rounded(in.fitCase().brief().limits().roomC(), 1).toPlainString(), "", "");
        rows.row(
                "coolant, C",
                Mm.rounded(in.state().water().meanC(), 1) + " +-"
                        + Mm.rounded(in.coolantBand().halfK(), 1),
                "",
                "");
        in.junctions()
                .forEach(j -> rows.row(
                        (j.name().equals("card") ? "card's chip" : j.name()) + " by its own sensor, C",
                        Mm.rounded(j.temperatureC(), 1) + " +-" + Mm.rounded(j.plusMinusK(), 1),
                        "",
                        ""));
        rows.row(
                "air inside, C",
                Mm.rounded(in.state().caseC(), 1) + " +-"
                        + Mm.rounded(in.caseBand().halfK(), 1),
                "",
                "");
        rows.row(
                "flow, L/min",
                Mm.rounded(Units.lPerMin(in.state().water().flowM3PerS()), 2).toPlainString(),
                "",
                "");
        rows.row(
                "noise, dB(A) at 1 m",
                Mm.rounded(in.build().outcome().sound().levelDBA().orElse(0), 0) + " (weak as an absolute figure)",
                "",
                "");
        rows.row("fans, % of full speed", in.build().dutyPercent() + "", "", "");
        rows.row("earth: tray to the inlet's earth pin, ohm", "below 0.1", "", "");
        return rows;
    }

    static List<String> care(Inspection in) {
        Coolant coolant = in.machine().water().coolant();
        return List.of(
                "Coolant: " + coolant.title() + " (" + coolant.id() + "). Top up with nothing else. Change it every "
                        + coolant.changeMonths() + " months.",
                "Week 1: look at the level. Month 1: fittings and screws, for weeping and for hold.",
                "Every month: dust, filters. Every 6 months: coolant's look, filter of the loop.",
                "Every 12 to 24 months: open the processor block and clean its channels. 5 years: pump and seals.",
                "Wet, or a new noise: switch off at the wall first, then call. Do not open the supply.",
                "Transport: drained, or nine tenths full with the cap tight, reservoir upright, pump off.",
                "Coolant goes where local waste rules send it; keep it from children and animals.");
    }

    static List<String> cautions() {
        return List.of(
                "Cutting: goggles and face shield, gloves for sheet but none near turning tools, ears covered; everything"
                        + " electric out of the case; swarf taken up by vacuum and tape, never blown. Glass is never cut.",
                "Dust and paint: masks of the class that the sheet asks for. Two-part clear holds isocyanates: filter"
                        + " masks do not serve; air-fed apparatus or a licensed paint shop.",
                "Mains: supplies are not opened; inlets, switches and leads only as certified parts. Licensed people do"
                        + " what local rules keep for them.",
                "Coolant: keep it from electronics, children and animals; glycol can kill. Spill kit at hand.",
                "Lifting: see the chapter on mass; two people where glass is on two sides or it is heavy.",
                "Nothing here takes the place of local codes, of the makers' sheets or of licensed practice.");
    }
}
