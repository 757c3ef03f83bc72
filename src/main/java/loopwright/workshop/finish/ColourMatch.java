package loopwright.workshop.finish;

import java.util.List;
import loopwright.catalog.brief.Look;
import loopwright.catalog.brief.Look.Colour;
import loopwright.catalog.standard.Finishing.ColourSteps;

/**
 * Two colours that are meant to match, and whether they do. Gloss and texture are in no number: a card in the client's own
 * light decides.
 *
 * @param difference CIEDE2000
 * @param glossDiffers whether they shine differently
 */
public record ColourMatch(Colour one, Colour other, double difference, Seen seen, boolean glossDiffers) {

    /** How far a difference is seen. */
    public enum Seen {
        /** Not seen. */
        ALIKE,
        /** Just visible, side by side. */
        JUST,
        /** Visible. */
        VISIBLE
    }

    /** How far a difference is seen; a step itself is not yet over it. */
    static Seen seen(double difference, ColourSteps steps) {
        if (difference > steps.visible()) {
            return Seen.VISIBLE;
        }
        return difference > steps.justVisible() ? Seen.JUST : Seen.ALIKE;
    }

    /** The pairs of a look. */
    public static List<ColourMatch> of(Look look, ColourSteps steps) {
        return look.matches().stream()
                .map(m -> of(colour(look, m.one()), colour(look, m.other()), steps))
                .toList();
    }

    private static ColourMatch of(Colour one, Colour other, ColourSteps steps) {
        double difference = ColourDifference.of(one.lab(), other.lab());
        return new ColourMatch(one, other, difference, seen(difference, steps), one.gloss() != other.gloss());
    }

    private static Colour colour(Look look, String id) {
        return look.colours().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no colour " + id));
    }
}
