package loopwright.workshop.finish;

import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.standard.Finishing;

/**
 * Room that new paint takes where two painted faces look at each other: slots get narrower, press fits tighter.
 *
 * @param lowHmm with the film that is reckoned with
 * @param highHmm with the thickest
 */
public record FilmLoss(String part, String where, int lowHmm, int highHmm) {

    static List<FilmLoss> of(List<PaintedPart> parts, Finishing.Film film) {
        List<FilmLoss> out = new ArrayList<>();
        int low = 2 * film.faceMm().valueHmm();
        int high = 2 * film.faceMostMm().valueHmm();
        for (PaintedPart part : parts) {
            String where = switch (part.kind()) {
                case PANEL -> "slots and holes narrower, sheet thicker under screw heads";
                case INSERT -> "tighter in its opening, thicker under screw heads";
                case COVER -> "rim thicker, tighter over what it encloses";
                case BODY -> "tighter where it slides or presses in";
            };
            out.add(new FilmLoss(part.id(), where, low, high));
        }
        return List.copyOf(out);
    }
}
