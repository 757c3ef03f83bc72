package loopwright.paper;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import loopwright.answer.InspectAnswer;
import loopwright.answer.cable.CablePlan;
import loopwright.answer.cable.CablePlan.CableUse;
import loopwright.answer.cable.CablePlan.Feed;
import loopwright.answer.cable.CablePlan.HoleUse;
import loopwright.answer.cable.CablePlan.Verdict;
import loopwright.catalog.brief.Terms;
import loopwright.catalog.part.Lead;
import loopwright.power.cable.LeadChoice;

/** The cables of a build, for people: do they reach, by which way, what is left over, what sleeving takes. */
final class InspectCableLines {

    private static final int HMM_PER_MM = 100;
    private static final int PERCENT = 100;

    private InspectCableLines() {}

    static Passages of(InspectAnswer answer) {
        Optional<CablePlan> plan = answer.cables();
        if (plan.isEmpty()) {
            return new Passages().say("", "Neither practice nor supply say enough of cables.");
        }
        Terms terms = answer.inspection().fitCase().brief().terms();
        Passages out = new Passages().table(feeds(plan.get()));
        cures(plan.get(), terms, out);
        holes(plan.get(), out);
        leftOver(plan.get(), out);
        plan.get().straight().ifPresent(s -> out.say("16-pin plug: ", straight(s)));
        sleeving(plan.get(), out.gap());
        return out.say(
                "", "Nothing is opened at a supply: inside it mains voltage stays after unplugging. Unplug first.");
    }

    private static Columns feeds(CablePlan plan) {
        Columns table = Columns.headed("plug", "to", "cable", "way mm", "wants", "has", "verdict", "goes");
        for (Feed feed : plan.feeds()) {
            table.row(
                    JsonWords.of(feed.plug()),
                    feed.to(),
                    feed.cable().map(n -> "#" + n).orElse("-"),
                    Mm.rounded(feed.way().lengthHmm() / (double) HMM_PER_MM, 0).toPlainString(),
                    Integer.toString(feed.wantedMm()),
                    feed.verdict() == Verdict.NO_CABLE ? "-" : Integer.toString(feed.hasMm()),
                    verdict(feed),
                    goes(feed));
        }
        return table;
    }

    static String verdict(Feed feed) {
        return switch (feed.verdict()) {
            case REACHES -> "reaches";
            case TOO_SHORT -> feed.lacksMm() + " mm SHORT";
            case NO_CABLE -> "NO CABLE";
        };
    }

    static String goes(Feed feed) {
        String after = feed.way().after().map(a -> "on from " + a + ", ").orElse("");
        if (!feed.way().open()) {
            return after + "no open way found: straight distance";
        }
        return after
                + (feed.way().holes().isEmpty()
                        ? "inside"
                        : "through " + String.join(", ", feed.way().holes()));
    }

    private static void cures(CablePlan plan, Terms terms, Passages out) {
        for (Feed feed : plan.feeds()) {
            if (feed.verdict() == Verdict.TOO_SHORT) {
                out.say("to reach the " + feed.to() + ": ", cure(feed.cure(), terms));
            }
        }
        if (plan.leadsCents() > 0) {
            out.say(
                    "",
                    "extension leads: " + money(plan.leadsCents(), terms)
                            + " in all, not in the build's price; rank does not price them");
        }
    }

    static String cure(Optional<LeadChoice> cure, Terms terms) {
        return cure.map(c -> c.leads().stream().map(Lead::title).collect(Collectors.joining(" and ")) + ", "
                        + money(c.priceCents(), terms))
                .orElse("no lead of the catalogue cures it");
    }

    private static String money(long cents, Terms terms) {
        return Mm.rounded(cents / (double) PERCENT, 2) + " " + terms.currency();
    }

    private static void holes(CablePlan plan, Passages out) {
        for (HoleUse use : plan.holes()) {
            if (!use.cables().isEmpty()) {
                out.say(
                        use.hole().id() + ": ",
                        numbers(use.cables()) + " in " + Mm.rounded(use.fillShare() * PERCENT, 0) + " % of "
                                + Mm.text(use.hole().longHmm()) + " x "
                                + Mm.text(use.hole().shortHmm()) + " mm free"
                                + (use.crowded() ? ": CROWDED" : ""));
            }
        }
        plan.room().behindTrayHmm().ifPresent(depth -> {
            String flat = plan.room().flatOnly() ? ": flat cables only" : "";
            String thick = plan.room().tooThick().isEmpty()
                    ? ""
                    : "; bundles of " + numbers(plan.room().tooThick()) + " are thicker and must lie flat";
            out.say("behind the tray: ", Mm.text(depth) + " mm" + flat + thick);
        });
    }

    private static String numbers(List<Integer> cables) {
        return cables.stream().map(n -> "#" + n).collect(Collectors.joining(", "));
    }

    private static void leftOver(CablePlan plan, Passages out) {
        String each = plan.cables().stream()
                .filter(c -> c.leftMm() > 0)
                .map(c ->
                        "#" + c.number() + " " + c.leftMm() + " mm" + (c.feeds().isEmpty() ? " (not used)" : ""))
                .collect(Collectors.joining(", "));
        out.say("left over: ", each.isEmpty() ? "nothing" : each);
        double left = plan.leftL();
        double free = plan.room().freeL();
        out.say(
                "to put away: ",
                Mm.rounded(left, 2) + " L, free " + Mm.rounded(free, 2) + " L ("
                        + plan.room().parking().stream()
                                .map(p -> p.title() + " " + Mm.rounded(p.freeL(), 2))
                                .collect(Collectors.joining(", "))
                        + "): " + (left <= free ? "goes in" : "TOO MUCH by " + Mm.rounded(left - free, 2) + " L"));
        String boxed = numbers(plan.cables().stream()
                .filter(CableUse::staysInTheBox)
                .map(CableUse::number)
                .toList());
        if (!boxed.isEmpty()) {
            out.say("stay in the box: ", boxed);
        }
    }

    static String straight(CablePlan.Straight straight) {
        String verdict = switch (straight.verdict()) {
            case OK -> "ok";
            case TIGHT -> "TIGHT: the plug's own depth is not free besides";
            case NO -> "NO: the wires bend too soon";
        };
        return Mm.text(straight.freeHmm()) + " mm free over the card, " + Mm.text(straight.straightHmm())
                + " straight before any bend + plug " + Mm.text(straight.plugHmm()) + ": " + verdict;
    }

    private static void sleeving(CablePlan plan, Passages out) {
        Columns table = Columns.headed("cable", "plug", "length", "wires", "cord m", "heat-shrinks", "feeds");
        double cordM = 0;
        int shrinks = 0;
        for (CableUse use : plan.cables()) {
            if (use.sleeving().isPresent()) {
                var s = use.sleeving().get();
                cordM += s.cordM();
                shrinks += s.shrinks();
                table.row(
                        "#" + use.number(),
                        JsonWords.of(use.plug()),
                        use.text(),
                        Integer.toString(s.conductors()),
                        Mm.rounded(s.cordM(), 1).toPlainString(),
                        Integer.toString(s.shrinks()),
                        String.join(", ", use.feeds()));
            }
        }
        out.table(table)
                .say(
                        "",
                        "sleeving in all: " + Mm.rounded(cordM, 1) + " m of cord, " + shrinks
                                + " heat-shrinks (or none); extension leads not counted");
    }
}
