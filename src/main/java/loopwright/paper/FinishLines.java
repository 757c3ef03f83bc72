package loopwright.paper;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import loopwright.catalog.brief.Look.Colour;
import loopwright.catalog.standard.Finishing.Climate;
import loopwright.catalog.standard.Finishing.Cure;
import loopwright.catalog.standard.Finishing.Minutes;
import loopwright.catalog.standard.Finishing.Product;
import loopwright.catalog.standard.Finishing.Step;
import loopwright.workshop.finish.BareEdge;
import loopwright.workshop.finish.Cans;
import loopwright.workshop.finish.ColourMatch;
import loopwright.workshop.finish.Finish;
import loopwright.workshop.finish.PaintPlan;
import loopwright.workshop.finish.PaintedPart;

/** Paint and colours of a build as lines of text and as rows of tables. */
public final class FinishLines {

    /** What is said wherever something is sprayed. */
    public static final List<String> CARE = List.of(
            "The paint's own label and safety sheet rule over every time, coat and window here.",
            "Spray outdoors or under extraction: solvent wants an A2P3 mask or what the sheet asks for; dust from sanding a"
                    + " P2 or P3 mask.",
            "Two-component paint holds isocyanates: filter masks do not hold them back. Without air-fed apparatus, use"
                    + " single-component paint or a licensed paint shop.",
            "Aerosols and solvents burn: no sparks, no grinding, no open solvent in the paint corner; an extinguisher at"
                    + " hand. Local rules on spraying, waste and storage apply.",
            "Eye protection and nitrile gloves with solvents.");

    /** Hundredths of a millimetre, squared, in a square metre: ten digits. */
    private static final int HMM2_DIGITS = 10;

    private static final int MIN_PER_H = 60;

    private FinishLines() {}

    /** Everything, in lines of at most {@value Lines#WIDTH} columns. */
    public static List<String> of(Finish finish) {
        List<String> out = new ArrayList<>();
        if (finish.painted().all().isEmpty()) {
            out.add("Nothing is painted.");
        } else {
            Columns parts = Columns.headed("m2", "surface", "painted for", "part");
            partRows(finish).forEach(r -> parts.row(r.toArray(String[]::new)));
            out.addAll(parts.lines(""));
            Columns cans = Columns.headed("cans", "spare", "m2 coated", "of");
            canRows(finish).forEach(r -> cans.row(r.toArray(String[]::new)));
            out.addAll(cans.lines(""));
            finish.plans().forEach(plan -> steps(plan, finish.practice().cure(), out));
            window(finish, out);
        }
        finish.painted()
                .asBought()
                .forEach(title -> out.addAll(Lines.wrap("", title + ": keeps the finish it comes with")));
        finish.shielded().masks().forEach(m -> out.addAll(Lines.wrap("mask:  ", m.part() + ": " + m.what())));
        finish.losses()
                .forEach(l -> out.addAll(Lines.wrap(
                        "film:  ",
                        l.part() + ": " + Mm.text(l.lowHmm()) + "-" + Mm.text(l.highHmm()) + " mm on two faces: "
                                + l.where())));
        finish.shielded().edges().forEach(e -> out.addAll(Lines.wrap("bare edge:  ", edge(e))));
        colours(finish, out);
        if (!finish.painted().all().isEmpty()) {
            CARE.forEach(c -> out.addAll(Lines.wrap("care:  ", c)));
        }
        return out;
    }

    /** A row a part: square metres of both sides, surface, mod, title. */
    public static List<List<String>> partRows(Finish finish) {
        return finish.painted().all().stream()
                .map(p -> List.of(m2(p.areaHmm2()), surface(p), p.mod(), title(p)))
                .toList();
    }

    private static String title(PaintedPart part) {
        return part.title() + (part.hasMinutes() ? "" : " (the plan's hours hold no minutes for it)");
    }

    private static String surface(PaintedPart part) {
        return part.surface().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** A row a product: cans, spare, square metres coated, what. */
    public static List<List<String>> canRows(Finish finish) {
        return finish.cans().stream()
                .map(c -> List.of(
                        String.valueOf(c.cans()), String.valueOf(c.spare()), m2(c.coatedHmm2()), product(c, finish)))
                .toList();
    }

    private static String product(Cans cans, Finish finish) {
        if (cans.product() != Product.COLOUR || finish.colours().paints().isEmpty()) {
            return word(cans.product());
        }
        return word(cans.product()) + ", " + finish.colours().paints().get(0).title();
    }

    private static String word(Product product) {
        return product.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static void steps(PaintPlan plan, Cure cure, List<String> out) {
        String parts = plan.parts().stream().map(PaintedPart::id).collect(Collectors.joining(", "));
        out.add("");
        out.addAll(Lines.wrap("order for ", surface(plan.parts().get(0)) + ": " + parts));
        int number = 0;
        for (Step step : plan.system().steps()) {
            number++;
            out.addAll(Lines.wrap(String.format(Locale.ROOT, "%2d  ", number), step.what() + coats(step)));
        }
        out.addAll(Lines.wrap(
                "    ",
                "waits between: " + hours(plan.waitLowMin()) + " to " + hours(plan.waitHighMin()) + " h; then "
                        + number(cure.assembleH()) + " h before assembly, " + number(cure.fullH())
                        + " h until fully hard"));
    }

    private static String coats(Step step) {
        String coats = step.coats()
                .map(c -> ": " + c.planned() + (c.planned() == 1 ? " coat" : " coats")
                        + (c.least() < c.most() ? " (" + c.least() + " to " + c.most() + ")" : ""))
                .orElse("");
        String pause = step.pause()
                .map(p -> ", " + (step.coats().isPresent() ? "each then " : "then ") + pause(p))
                .orElse("");
        return coats + pause;
    }

    private static String pause(Minutes pause) {
        boolean inHours = pause.lowMin() >= LONG_MIN;
        String low = inHours ? hours(pause.lowMin()) : String.valueOf(pause.lowMin());
        String high = inHours ? hours(pause.highMin()) : String.valueOf(pause.highMin());
        return low + (pause.lowMin() < pause.highMin() ? "-" + high : "") + (inHours ? " h" : " min");
    }

    /** From here pauses are told in hours. */
    private static final int LONG_MIN = 120;

    private static void window(Finish finish, List<String> out) {
        Cure cure = finish.practice().cure();
        Climate air = finish.practice().climate();
        out.addAll(Lines.wrap(
                "",
                "Next coat within " + number(cure.recoatWithinH()) + " h or after " + number(cure.recoatAfterH())
                        + " h: between, solvent lifts the film of many cans. Air " + number(air.leastC()) + " to "
                        + number(air.mostC()) + " C, humidity under " + number(air.humidityMaxPercent())
                        + " %, the part " + number(air.overDewPointK())
                        + " K or more over the dew point. Common practice: the label rules."));
    }

    private static String edge(BareEdge edge) {
        String length = edge.lengthHmm().isPresent()
                ? Mm.rounded(edge.lengthHmm().getAsInt() / 100.0, 0) + " mm of edge"
                : "edges";
        return edge.panel() + ", " + edge.mod() + ": " + length + "; file, round, then "
                + (edge.isSteel() ? "zinc or epoxy primer the same day: bare steel rusts in hours" : "etch primer");
    }

    private static void colours(Finish finish, List<String> out) {
        for (Colour c : finish.colours().all()) {
            out.addAll(Lines.wrap(
                    "colour:  ",
                    c.title() + " (" + JsonWords.of(c.on()) + ", " + JsonWords.of(c.gloss()) + "): L* "
                            + number(c.lab().lightness()) + ", a* "
                            + number(c.lab().greenRed()) + ", b* "
                            + number(c.lab().blueYellow())));
        }
        for (ColourMatch match : finish.colours().matches()) {
            out.addAll(Lines.wrap("match:  ", match(match)));
        }
        if (!finish.colours().matches().isEmpty()) {
            out.addAll(Lines.wrap(
                    "",
                    "Difference by CIEDE2000. Gloss and texture are in no number: agree on a sprayed card in the client's own"
                            + " light, with date and batch on its back."));
        }
        finish.colours()
                .dye()
                .ifPresent(d -> out.addAll(Lines.wrap(
                        "dye:  ",
                        d.title() + ": " + number(d.dropsPerL()) + " drops a litre, " + d.drops() + " drops in "
                                + number(d.coolantL())
                                + " L; keep it for refills. Dye stains clear tube: test a drop.")));
    }

    private static String match(ColourMatch match) {
        String seen = switch (match.seen()) {
            case ALIKE -> "alike";
            case JUST -> "JUST VISIBLE side by side";
            case VISIBLE -> "VISIBLE";
        };
        return match.one().title() + " and " + match.other().title() + ": "
                + Mm.rounded(match.difference(), 1) + ", " + seen
                + (match.glossDiffers()
                        ? "; shine differently, " + JsonWords.of(match.one().gloss()) + " and "
                                + JsonWords.of(match.other().gloss())
                        : "");
    }

    private static String hours(int minutes) {
        return number(Mm.rounded((double) minutes / MIN_PER_H, 1).doubleValue());
    }

    private static String number(double value) {
        BigDecimal plain = BigDecimal.valueOf(value).stripTrailingZeros();
        return plain.scale() < 0 ? plain.setScale(0, RoundingMode.UNNECESSARY).toPlainString() : plain.toPlainString();
    }

    private static String m2(long areaHmm2) {
        return BigDecimal.valueOf(areaHmm2, HMM2_DIGITS)
                .setScale(3, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
