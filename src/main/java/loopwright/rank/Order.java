package loopwright.rank;

import java.util.Comparator;

/** What a list of builds is ordered by; ties go to the price, then the temperature. */
public enum Order {
    /** Cheapest first. */
    COST,
    /** Coolest first. */
    TEMPERATURE,
    /** Quietest first. */
    NOISE,
    /** Fewest hands-on minutes first. */
    LABOUR,
    /** Soonest first. */
    DAYS;

    /** The one figure that counts first, smaller is better. */
    long figure(Build.Outcome outcome) {
        return switch (this) {
            case COST -> outcome.priceCents();
            case TEMPERATURE -> outcome.coolantOverRoomCentiK();
            case NOISE -> outcome.sound().millionths();
            case LABOUR -> outcome.labourMin();
            case DAYS -> outcome.days();
        };
    }

    /** The same figure of a bound. */
    long figure(Goal.Bound bound) {
        return switch (this) {
            case COST -> bound.priceCents();
            case TEMPERATURE -> bound.coolantOverRoomCentiK();
            case NOISE -> bound.soundMillionths();
            case LABOUR -> bound.labourMin();
            case DAYS -> bound.days();
        };
    }

    Comparator<Build.Outcome> outcomes() {
        return Comparator.comparingLong((Build.Outcome o) -> figure(o))
                .thenComparingLong(Build.Outcome::priceCents)
                .thenComparingInt(Build.Outcome::coolantOverRoomCentiK);
    }
}
