package loopwright.workshop.finish;

/**
 * Dye in the coolant, written down for refills.
 *
 * @param coolantL that is ordered
 * @param drops in all of it, rounded to whole drops
 */
public record Dyeing(String title, double dropsPerL, double coolantL, long drops) {

    static Dyeing of(String title, double dropsPerL, double coolantL) {
        return new Dyeing(title, dropsPerL, coolantL, Math.round(dropsPerL * coolantL));
    }
}
