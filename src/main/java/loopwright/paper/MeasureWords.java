package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import loopwright.answer.measure.Hang;
import loopwright.answer.measure.InstrumentChoice;
import loopwright.answer.measure.Measurable;
import loopwright.answer.measure.MeasureAnswer;
import loopwright.answer.measure.Waiting;
import loopwright.answer.measure.Worth;
import loopwright.catalog.standard.Practice.Instrument;
import loopwright.catalog.standard.Practice.Stage;
import loopwright.fit.Witness;
import loopwright.tolerance.Chance;

/** What to measure, in the builder's words. */
final class MeasureWords {

    private static final double CENTS = 100;

    /** Parts of one shape that are offered as lines for a file of readings. */
    private static final int PASTED_MAX = 3;

    private MeasureWords() {}

    /** What to do first; nothing to measure is said too. */
    static String first(MeasureAnswer answer) {
        if (!answer.waiting().isEmpty()) {
            Waiting w = answer.waiting().get(0);
            return "Measure first: " + w.where() + " (" + w.measurable().text() + "), which nobody knows. " + waits(w)
                    + ".";
        }
        if (answer.worths().isEmpty() && answer.incompleteBecause().isPresent()) {
            return "Stopped before anything could be said.";
        }
        if (answer.worths().isEmpty()) {
            return answer.looked().isEmpty()
                    ? "Nothing fits and nothing waits: no reading is asked for."
                    : "Nothing needs measuring: every margin is sure, over 99.9 %.";
        }
        Worth w = answer.worths().get(0);
        boolean little = w.regretCents() < CENTS / 2;
        if (little && answer.witness().isPresent()) {
            return nothingDecides(answer.witness().get());
        }
        if (little && w.hang().exact() && w.hang().layouts() == 0) {
            return "Nothing needs measuring first: no reading avoids as much as " + money(CENTS / 2, answer)
                    + " of regret, and nothing hangs on the first dimension alone.";
        }
        String money = little
                ? "No reading changes a decision by itself, so no regret is avoided. "
                : "A reading avoids about " + money(w.regretCents(), answer) + " of regret. ";
        return "Measure first: " + w.spot() + " (" + w.measurable().text() + "). " + hang(w.hang(), answer) + ". "
                + money + sentence(with(w)) + ".";
    }

    /** No reading by itself changes a decision about one layout; what to do instead. */
    private static String nothingDecides(Witness witness) {
        double told = Chance.told(witness.probability().orElse(0));
        String fits = "No reading by itself changes a decision about this layout: it fits with "
                + ChanceWords.percent(witness.probability()).orElse("an unknown chance") + " ("
                + ChanceWords.word(witness.probability()) + "). ";
        return fits
                + switch (Chance.of(told)) {
                    case SURE -> "Go on.";
                    case LIKELY -> "Go on with care, or measure several of these.";
                    case TOSS_UP -> "Measure several of these, and plan the way out.";
                    case UNLIKELY -> "Rather change a part, the layout or a mod, or measure several of these.";
                };
    }

    private static String sentence(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** {@code 1205 layouts wait for it, for 1205 it is the only one}. */
    static String waits(Waiting w) {
        return counted(w.layouts()) + (w.layouts() == 1 ? " waits" : " wait") + " for it, for " + w.only()
                + " it is the only one";
    }

    /** {@code 14 layouts hang on it: 12 would die, 2 come alive}. */
    static String hang(Hang hang, MeasureAnswer answer) {
        if (answer.view().key().isPresent()) {
            return hang.die() == 0
                    ? "The layout does not hang on it alone"
                    : hang.exact()
                            ? "The layout hangs on it: off by its +-, it does not fit"
                            : "The layout may hang on it";
        }
        if (!hang.exact()) {
            return "At most " + hang.die() + " of the layouts that fit hang on it";
        }
        if (hang.layouts() == 0) {
            return "No layout hangs on it alone";
        }
        return counted(hang.layouts()) + (hang.layouts() == 1 ? " hangs" : " hang") + " on it: " + hang.die()
                + " would die, " + hang.comeAlive() + " come alive";
    }

    private static String counted(int layouts) {
        return layouts + (layouts == 1 ? " layout" : " layouts");
    }

    /** {@code tape, 3 m: not good enough; take calliper, 150 mm (+-0.05 mm)}. */
    static String with(Worth worth) {
        InstrumentChoice choice = worth.choice();
        if (choice.instrument().isEmpty()) {
            return "no instrument of the practice takes it";
        }
        Instrument taken = choice.instrument().get();
        String take = "take the " + taken.title() + " (+-" + Mm.text(taken.plusMinusHmm()) + " mm)";
        if (taken.plusMinusHmm() >= worth.measurable().now().plusMinusHmm()) {
            return take + ", though it is no surer than what is believed: read twice, from both sides";
        }
        return choice.notGoodEnough().isEmpty()
                ? take
                : choice.notGoodEnough().stream()
                                .map(i -> i.id().replace('-', ' '))
                                .collect(Collectors.joining(", "))
                        + (choice.notGoodEnough().size() == 1 ? " is" : " are") + " not good enough: " + take;
    }

    /** {@code 434 +-0.5 mm, datasheet}. */
    static String believed(Measurable measurable) {
        return Mm.text(measurable.now().valueHmm()) + " +-"
                + Mm.text(measurable.now().plusMinusHmm()) + " mm, "
                + JsonWords.of(measurable.now().known());
    }

    /** {@code 48 EUR}: whole ones from ten on. */
    static String money(double cents, MeasureAnswer answer) {
        return amount(cents) + " " + answer.fitCase().brief().terms().currency();
    }

    /** The amount alone. */
    static String amount(double cents) {
        return Mm.rounded(cents / CENTS, cents < 10 * CENTS ? 2 : 0).toPlainString();
    }

    /** When a clash is found. */
    static String stage(Stage stage) {
        return switch (stage) {
            case ON_PAPER -> "on paper";
            case DRY_MOCK_UP -> "in a dry mock-up";
            case AFTER_CUTTING -> "after cutting";
            case AFTER_PAINT -> "after paint";
            case AFTER_ASSEMBLY -> "after assembly";
            case AFTER_FILL -> "after filling";
        };
    }

    /** Lines for a file of readings, one a part. */
    static List<String> pasted(Measurable measurable, String instrument) {
        List<String> out = new ArrayList<>();
        measurable.ids().stream()
                .limit(PASTED_MAX)
                .forEach(id -> out.addAll(Lines.wrap(
                        "- ",
                        "    ",
                        "{of: " + id + ", dimension: " + measurable.path() + ", value_mm: , instrument: " + instrument
                                + ", date: }")));
        return out;
    }
}
