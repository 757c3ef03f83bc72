package loopwright.workshop.money;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import loopwright.catalog.measure.Length;
import loopwright.catalog.measure.Lengths;
import loopwright.catalog.part.Part;
import loopwright.quantity.Known;
import loopwright.workshop.schedule.Schedule;

/**
 * What is ordered, and by when. Unit: whole cents; days of the calendar.
 *
 * @param lines what has to be ordered first comes first
 * @param totalCents of all lines
 */
public record OrderList(List<Line> lines, long totalCents) {

    /**
     * One order line.
     *
     * @param need the day on which the task that needs it begins
     * @param orderBy the working day at or before need less lead time, the days kept in hand and the day it comes on
     * @param late whether that day is before the schedule's first: then it is ordered at once, with less in hand
     * @param latest the last working day to order it so that the end stays, nothing kept in hand
     * @param measured whether every dimension of it is measured
     */
    public record Line(
            Part part,
            String role,
            BigDecimal quantity,
            String unit,
            long unitCents,
            long cents,
            int leadDays,
            LocalDate need,
            LocalDate orderBy,
            boolean late,
            LocalDate latest,
            Measured measured) {}

    /** How well its dimensions are known. */
    public enum Measured {
        /** Every one is measured. */
        YES,
        /** Some are as the sheet says. */
        SHEET,
        /** One at least is not known: measure before anything is cut. */
        UNKNOWN,
        /** It has none that count. */
        NOTHING_TO_MEASURE
    }

    /** Copies. */
    public OrderList {
        lines = List.copyOf(lines);
    }

    /**
     * The list for a schedule.
     *
     * @param bufferDays by which a part should lie there before it is needed
     */
    public static OrderList of(Schedule schedule, int bufferDays) {
        List<Line> lines = new ArrayList<>();
        for (Schedule.Arrival arrival : schedule.arrivals()) {
            Part part = arrival.item().part();
            LocalDate need = arrival.needed().toLocalDate();
            LocalDate orderBy = schedule.orderDay(need.minusDays(part.buy().leadDays() + bufferDays + 1L));
            lines.add(new Line(
                    part,
                    arrival.item().role(),
                    arrival.item().quantity(),
                    arrival.item().unit(),
                    part.buy().priceCents(),
                    arrival.item().cents(),
                    part.buy().leadDays(),
                    need,
                    orderBy,
                    orderBy.isBefore(schedule.start()),
                    arrival.latestOrder(),
                    measured(part)));
        }
        lines.sort(Comparator.comparing(Line::orderBy)
                .thenComparing(Line::role)
                .thenComparing(l -> l.part().id()));
        return new OrderList(lines, lines.stream().mapToLong(Line::cents).sum());
    }

    private static Measured measured(Part part) {
        List<Length> lengths = Lengths.of(part.id(), (Record) part);
        if (lengths.isEmpty()) {
            return Measured.NOTHING_TO_MEASURE;
        }
        if (lengths.stream().anyMatch(l -> l.dimension().isUnknown())) {
            return Measured.UNKNOWN;
        }
        return lengths.stream().allMatch(l -> l.dimension().known() == Known.MEASURED) ? Measured.YES : Measured.SHEET;
    }
}
