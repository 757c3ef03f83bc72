package loopwright.answer.why;

import java.math.BigDecimal;
import java.math.RoundingMode;
import loopwright.answer.why.BuildWish.Figure;
import loopwright.loop.SoundPower;
import loopwright.rank.Build;
import loopwright.rank.BuildLimits;
import loopwright.rank.Order;

/** The figures of builds that can be limited: how a limit is set, what a build has, and in which order the best comes first. */
final class Figures {

    private static final int MIN_PER_H = 60;
    private static final double CENTI = 100;

    private Figures() {}

    /** Limits with one more, in the unit of the figure. */
    static BuildLimits with(BuildLimits limits, Figure figure, double most, double roomC) {
        return switch (figure) {
            case COOLANT -> limits.withCoolant(centi(most - roomC));
            case NOISE -> limits.withSound(SoundPower.ofDBA(most));
            case PRICE -> limits.withPrice(Math.round(most));
            case LABOUR -> limits.withLabour((int) Math.floor(most * MIN_PER_H));
            case DAYS -> limits.withDays((int) most);
        };
    }

    private static int centi(double kelvin) {
        return BigDecimal.valueOf(kelvin)
                .movePointRight(2)
                .setScale(0, RoundingMode.HALF_UP)
                .intValueExact();
    }

    /** What a build has, in the unit of the figure. */
    static double of(Build build, Figure figure, double roomC) {
        Build.Outcome outcome = build.outcome();
        return switch (figure) {
            case COOLANT -> roomC + outcome.coolantOverRoomCentiK() / CENTI;
            case NOISE -> outcome.sound().levelDBA().orElse(0);
            case PRICE -> outcome.priceCents();
            case LABOUR -> outcome.labourMin() / (double) MIN_PER_H;
            case DAYS -> outcome.days();
        };
    }

    /** The order in which the best by the figure comes first. */
    static Order order(Figure figure) {
        return switch (figure) {
            case COOLANT -> Order.TEMPERATURE;
            case NOISE -> Order.NOISE;
            case PRICE -> Order.COST;
            case LABOUR -> Order.LABOUR;
            case DAYS -> Order.DAYS;
        };
    }

    /** The unit in which a difference is told. */
    static String unit(Figure figure, String currency) {
        return switch (figure) {
            case COOLANT -> "K";
            case NOISE -> "dB";
            case PRICE -> currency;
            case LABOUR -> "h";
            case DAYS -> "days";
        };
    }

    /** A difference in that unit; money in whole units of the currency. */
    static double amount(Figure figure, double difference) {
        return figure == Figure.PRICE ? difference / CENTI : difference;
    }

    /** A figure in words: {@code coolant at 41.3 C}. */
    static String words(Figure figure, double value, String currency) {
        return switch (figure) {
            case COOLANT -> "coolant at " + BuildWish.number(value, 2) + " C";
            case NOISE -> BuildWish.number(value, 1) + " dB(A)";
            case PRICE -> BuildWish.number(value / CENTI, 2) + " " + currency;
            case LABOUR -> BuildWish.number(value, 1) + " hands-on hours";
            case DAYS -> BuildWish.number(value, 0) + " days";
        };
    }
}
