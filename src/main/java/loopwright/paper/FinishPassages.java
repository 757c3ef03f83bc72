package loopwright.paper;

import java.math.BigDecimal;
import java.math.RoundingMode;
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

/** Paint and colours of a build. */
public final class FinishPassages {

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

    private FinishPassages() {}

    /** Everything but {@link #CARE}. */
    public static Passages of(Finish finish) {
        Passages out = new Passages();
        if (finish.painted().all().isEmpty()) {
            out.say("", "Nothing is painted.");
        } else {
            out.table(parts(finish)).table(cans(finish));
            finish.plans().forEach(plan -> steps(plan, finish.practice().cure(), out));
            window(finish, out);
        }
        finish.painted().asBought().forEach(title -> out.say("", title + ": keeps the finish it comes with"));
        Columns masks = Columns.headed("mask on", "what");
        finish.shielded().masks().forEach(m -> masks.row(m.part(), m.what()));
        out.table(masks);
        finish.losses()
                .forEach(l -> out.say(
                        "film: ",
                        l.part() + ": " + Mm.text(l.lowHmm()) + "-" + Mm.text(l.highHmm()) + " mm on two faces: "
                                + l.where()));
        finish.shielded().edges().forEach(e -> out.say("bare edge: ", edge(e)));
        colours(finish, out);
        return out;
    }

    private static Columns parts(Finish finish) {
        Columns out = Columns.headed("m2", "surface", "painted for", "part");
        finish.painted().all().forEach(p -> out.row(m2(p.areaHmm2()), surface(p), p.mod(), title(p)));
        return out;
    }

    private static Columns cans(Finish finish) {
        Columns out = Columns.headed("cans", "spare", "m2 coated", "of");
        finish.cans()
                .forEach(c -> out.row(
                        String.valueOf(c.cans()), String.valueOf(c.spare()), m2(c.coatedHmm2()), product(c, finish)));
        return out;
    }

    private static String title(PaintedPart part) {
        return part.title() + (part.hasMinutes() ? "" : " (the plan's hours hold no minutes for it)");
    }

    private static String surface(PaintedPart part) {
        return part.surface().name().toLowerCase(Locale.ROOT).replace('_', ' ');
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

    private static void steps(PaintPlan plan, Cure cure, Passages out) {
        String parts = plan.parts().stream().map(PaintedPart::id).collect(Collectors.joining(", "));
        out.gap().say("order for " + surface(plan.parts().get(0)) + ": ", parts);
        Columns steps = Columns.headed("step", "what", "coats", "between coats", "then wait");
        int number = 0;
        for (Step step : plan.system().steps()) {
            number++;
            steps.row(String.valueOf(number), step.what(), coats(step), flash(step), pauses(step));
        }
        out.table(steps)
                .say(
                        "",
                        "Flashes and waits: " + hours(plan.waitLowMin()) + " to " + hours(plan.waitHighMin())
                                + " h; then "
                                + number(cure.assembleH()) + " h before assembly, " + number(cure.fullH())
                                + " h until fully hard.");
    }

    private static String coats(Step step) {
        return step.coats()
                .map(c -> c.planned() + (c.least() < c.most() ? " (" + c.least() + " to " + c.most() + ")" : ""))
                .orElse("");
    }

    private static String flash(Step step) {
        return step.flash().map(FinishPassages::pause).orElse("");
    }

    private static String pauses(Step step) {
        return step.pause().map(FinishPassages::pause).orElse("");
    }

    private static String pause(Minutes pause) {
        boolean inHours = pause.lowMin() >= LONG_MIN;
        String low = inHours ? hours(pause.lowMin()) : String.valueOf(pause.lowMin());
        String high = inHours ? hours(pause.highMin()) : String.valueOf(pause.highMin());
        return low + (pause.lowMin() < pause.highMin() ? "-" + high : "") + (inHours ? " h" : " min");
    }

    /** From here pauses are told in hours. */
    private static final int LONG_MIN = 120;

    private static void window(Finish finish, Passages out) {
        Cure cure = finish.practice().cure();
        Climate air = finish.practice().climate();
        out.say(
                "",
                "Recoat window: a coat over one that is not sanded, of the same product or clear over colour, goes on"
                        + " within " + number(cure.recoatWithinH()) + " h, or only after " + number(cure.recoatAfterH())
                        + " h: between, solvent lifts the film of many cans. The schedule sprays such coats in one go. What"
                        + " has dried and is sanded, like filler before colour, has no window. Air "
                        + number(air.leastC()) + " to "
                        + number(air.mostC()) + " C, humidity under " + number(air.humidityMaxPercent())
                        + " %, the part " + number(air.overDewPointK())
                        + " K or more over the dew point. Common practice: the label rules.");
    }

    private static String edge(BareEdge edge) {
        String length = edge.lengthHmm().isPresent()
                ? Mm.rounded(edge.lengthHmm().getAsInt() / 100.0, 0) + " mm of edge"
                : "edges";
        return edge.panel() + ", " + edge.mod() + ": " + length + "; file, round, then "
                + (edge.isSteel() ? "zinc or epoxy primer the same day: bare steel rusts in hours" : "etch primer");
    }

    private static void colours(Finish finish, Passages out) {
        Columns colours = Columns.headed("colour", "on", "shine", "L*", "a*", "b*");
        for (Colour c : finish.colours().all()) {
            colours.row(
                    c.title(),
                    JsonWords.of(c.on()),
                    JsonWords.of(c.gloss()),
                    number(c.lab().lightness()),
                    number(c.lab().greenRed()),
                    number(c.lab().blueYellow()));
        }
        out.table(colours);
        if (!finish.colours().matches().isEmpty()) {
            Columns matches = Columns.headed("meant to match", "and", "difference", "to the eye");
            finish.colours()
                    .matches()
                    .forEach(m -> matches.row(
                            m.one().title(),
                            m.other().title(),
                            Mm.rounded(m.difference(), 1).toPlainString(),
                            seen(m)));
            out.table(matches)
                    .say(
                            "",
                            "Difference by CIEDE2000. Gloss and texture are in no number: agree on a sprayed card in the"
                                    + " client's own light, with date and batch on its back.");
        }
        finish.colours()
                .dye()
                .ifPresent(d -> out.say(
                        "dye: ",
                        d.title() + ": " + number(d.dropsPerL()) + " drops a litre, " + d.drops() + " drops in "
                                + number(d.coolantL())
                                + " L; keep it for refills. Dye stains clear tube: test a drop."));
    }

    private static String seen(ColourMatch match) {
        String seen = switch (match.seen()) {
            case ALIKE -> "alike";
            case JUST -> "JUST VISIBLE side by side";
            case VISIBLE -> "VISIBLE";
        };
        return seen
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
