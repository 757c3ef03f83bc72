package loopwright.workshop.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import loopwright.catalog.standard.Practice;

/**
 * What one clash costs when it is found at a stage, at an hourly rate: why a dry fit is worth its hours.
 *
 * @param lowCents when all goes well
 * @param highCents when it does not
 */
public record Rework(Practice.Stage stage, long lowCents, long highCents) {

    /** A stage after the other, by the trade's hours. */
    public static List<Rework> of(Practice practice, long rateCentsPerH) {
        return practice.measuring().clashHours().stream()
                .map(c -> new Rework(c.stage(), cents(c.lowH(), rateCentsPerH), cents(c.highH(), rateCentsPerH)))
                .toList();
    }

    private static long cents(double hours, long rateCentsPerH) {
        return BigDecimal.valueOf(hours)
                .multiply(BigDecimal.valueOf(rateCentsPerH))
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
    }
}
