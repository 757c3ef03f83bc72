package loopwright.catalog.measure;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.read.Item;
import loopwright.catalog.read.Nearest;
import loopwright.catalog.read.Problems;
import loopwright.catalog.standard.Practice;
import loopwright.quantity.Hundredths;

/** Holds readings against the catalogue: items, lengths, their limits, instruments and dates. */
public final class ReadingCheck {

    private final Lengths lengths;
    private final Practice.Measuring measuring;
    private final Problems problems;

    /** A check that notes its problems. */
    public ReadingCheck(Lengths lengths, Practice.Measuring measuring, Problems problems) {
        this.lengths = lengths;
        this.measuring = measuring;
        this.problems = problems;
    }

    /** The reading of an item, if everything in it can be understood; else every problem of it is noted. */
    public Optional<Taken> taken(Item item) {
        Optional<Reading> bound = item.as(Reading.class);
        if (bound.isEmpty()) {
            return Optional.empty();
        }
        Reading reading = bound.get();
        Optional<Length> length = length(item, reading);
        Optional<Integer> value = hundredths(item, "value_mm", reading.valueMm());
        if (length.isPresent()
                && value.isPresent()
                && !length.get().range().holds(BigDecimal.valueOf(reading.valueMm()))) {
            problems.add(item.problem(
                    "value_mm",
                    plain(reading.valueMm()),
                    length.get().range().words() + " for " + length.get().address(),
                    length.get().range().hint()));
            value = Optional.empty();
        }
        Optional<Practice.Instrument> instrument = instrument(item, reading.instrument());
        Optional<Integer> plusMinus = reading.plusMinusMm()
                .map(mm -> hundredths(item, "plus_minus_mm", mm))
                .orElseGet(() -> instrument.map(Practice.Instrument::plusMinusHmm));
        Optional<LocalDate> date = date(item, reading.date());
        if (length.isEmpty() || value.isEmpty() || instrument.isEmpty() || plusMinus.isEmpty() || date.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Taken(
                length.get(),
                value.get(),
                plusMinus.get(),
                reading.instrument(),
                date.get(),
                item.subject().file() + ":" + item.node().at().line()));
    }

    private Optional<Length> length(Item item, Reading reading) {
        if (!lengths.ids().contains(reading.of())) {
            problems.add(item.problem(
                    "of",
                    "\"" + reading.of() + "\"",
                    "the id of a part or a chassis of the catalogue, practice or standards",
                    Nearest.hint(reading.of(), lengths.ids())));
            return Optional.empty();
        }
        Optional<Length> found = lengths.find(reading.of(), reading.dimension());
        if (found.isEmpty()) {
            boolean other = lengths.hasOther(reading.of(), reading.dimension());
            problems.add(item.problem(
                    "dimension",
                    "\"" + reading.dimension() + "\"" + (other ? ", which is no length with a +-" : ""),
                    "the path of a length of " + reading.of(),
                    other ? "" : lengths.hint(reading.of(), reading.dimension())));
        }
        return found;
    }

    private Optional<Practice.Instrument> instrument(Item item, String id) {
        Optional<Practice.Instrument> found = measuring.findInstrument(id);
        if (found.isEmpty()) {
            List<String> known = measuring.instruments().stream()
                    .map(Practice.Instrument::id)
                    .toList();
            problems.add(item.problem(
                    "instrument",
                    "\"" + id + "\"",
                    known.isEmpty()
                            ? "an instrument of the practice, which has none"
                            : "an instrument of the practice: " + String.join(", ", known),
                    Nearest.hint(id, known)));
        }
        return found;
    }

    private Optional<LocalDate> date(Item item, String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException e) {
            // What is wrong with it does not matter: the message says what a date is.
            problems.add(item.problem("date", "\"" + text + "\"", "a date like 2026-03-09", ""));
            return Optional.empty();
        }
    }

    private Optional<Integer> hundredths(Item item, String field, double mm) {
        try {
            return Optional.of(Hundredths.ofMm(BigDecimal.valueOf(mm)));
        } catch (ArithmeticException e) {
            // More decimals than a length has.
            problems.add(item.problem(field, plain(mm), "at most two decimals", ""));
            return Optional.empty();
        }
    }

    private static String plain(double mm) {
        return BigDecimal.valueOf(mm).stripTrailingZeros().toPlainString();
    }
}
