package loopwright.answer.why;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A limit that is wished of a build.
 *
 * @param text as it was written
 * @param most the limit, in the unit of the figure
 */
public record BuildWish(String text, Figure figure, double most) {

    /** Figures that can be limited, each with its unit. */
    public enum Figure {
        /** Coolant at full load, C. */
        COOLANT("coolant", "C", "-?\\d{1,3}(?:\\.\\d{1,2})?C"),
        /** Noise at 1 m, dB(A). */
        NOISE("noise", "dBA", "\\d{1,3}(?:\\.\\d)?dBA"),
        /** Price, in the brief's currency. */
        PRICE("price", "", "\\d{1,7}(?:\\.\\d{1,2})?"),
        /** Hands-on hours. */
        LABOUR("labour", "h", "\\d{1,4}(?:\\.\\d{1,2})?h"),
        /** Days until handover. */
        DAYS("days", "", "\\d{1,4}");

        private final String word;
        private final String unit;
        private final Pattern form;

        Figure(String word, String unit, String form) {
            this.word = word;
            this.unit = unit;
            this.form = Pattern.compile(form);
        }

        /** Its word in a wish. */
        public String word() {
            return word;
        }

        /** The unit it is written in. */
        public String unit() {
            return unit;
        }
    }

    /** What a wish of a build may start with. */
    static final List<String> WORDS = List.of("coolant", "noise", "price", "labour", "days", "ready");

    private static final int CENTS = 100;

    /** Reads a wish; empty when it is not one about builds. */
    static Optional<BuildWish> read(String text, Optional<LocalDate> start) {
        int at = text.indexOf('=');
        String what = at < 0 ? text : text.substring(0, at);
        String value = at < 0 ? "" : text.substring(at + 1);
        if (what.equals("ready")) {
            return Optional.of(ready(text, value, start));
        }
        for (Figure figure : Figure.values()) {
            if (figure.word.equals(what)) {
                Matcher matcher = figure.form.matcher(value);
                if (!matcher.matches()) {
                    throw new IllegalArgumentException("write " + example(figure));
                }
                BigDecimal number = new BigDecimal(value.substring(0, value.length() - figure.unit.length()));
                BigDecimal most = figure == Figure.PRICE
                        ? number.multiply(BigDecimal.valueOf(CENTS)).setScale(0, RoundingMode.UNNECESSARY)
                        : number;
                return Optional.of(new BuildWish(text, figure, most.doubleValue()));
            }
        }
        return Optional.empty();
    }

    private static String example(Figure figure) {
        return switch (figure) {
            case COOLANT -> "coolant=40C, at most 40 degrees at full load";
            case NOISE -> "noise=30dBA, at most 30 dB(A) at 1 m";
            case PRICE -> "price=2900, at most so much in the brief's currency";
            case LABOUR -> "labour=16h, at most 16 hands-on hours";
            case DAYS -> "days=14, handed over within 14 days";
        };
    }

    private static BuildWish ready(String text, String value, Optional<LocalDate> start) {
        LocalDate day;
        try {
            day = LocalDate.parse(value);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException("write ready=2027-03-01, year, month and day", e);
        }
        if (start.isEmpty()) {
            throw new IllegalArgumentException("a day wants --start DATE too: the day the work starts");
        }
        long days = ChronoUnit.DAYS.between(start.get(), day);
        if (days < 0) {
            throw new IllegalArgumentException("that day is before the start, " + start.get());
        }
        return new BuildWish(text, Figure.DAYS, days);
    }

    /** What is wished, without "you want". */
    String words(String currency) {
        return switch (figure) {
            case COOLANT -> "coolant at most " + number(most, 2) + " C at full load";
            case NOISE -> "at most " + number(most, 1) + " dB(A) at 1 m";
            case PRICE -> "at most " + number(most / CENTS, 2) + " " + currency;
            case LABOUR -> "at most " + number(most, 2) + " hands-on hours";
            case DAYS -> "handover within " + number(most, 0) + " days";
        };
    }

    /** A number with at most so many decimals, without needless zeros. */
    static String number(double value, int decimals) {
        String text = BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
        return text.toLowerCase(Locale.ROOT);
    }
}
