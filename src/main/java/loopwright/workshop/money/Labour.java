package loopwright.workshop.money;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import loopwright.catalog.standard.WorkStage;
import loopwright.catalog.standard.Workshop;
import loopwright.workshop.schedule.WorkPlan;

/**
 * What the hands cost: stage by stage at what is likely, and a line for how far the whole job may run off.
 *
 * <p>Job spread = root of the sum of the squares of the stages' spreads; quoted at likely + factor · job spread. Cents are whole
 * and every sum adds up: a stage's cents are its share of the likely minutes, what rounding leaves is in the last line.
 *
 * @param lines a stage a line
 * @param plannedMin the plan's minutes, which the ranking counts
 * @param quotedMin likely + factor · job spread, rounded up to whole minutes
 * @param plannedCents the plan's minutes at the rate, half up
 * @param spreadCents what the quoted minutes cost beyond the stages' lines
 */
public record Labour(List<Line> lines, int plannedMin, int quotedMin, long plannedCents, long spreadCents) {

    private static final int MIN_PER_H = 60;

    /** Money for a stage at what is likely. */
    public record Line(StageHours hours, long cents) {}

    /** Copies. */
    public Labour {
        lines = List.copyOf(lines);
    }

    /** The labour of a plan. */
    static Labour of(WorkPlan plan, Workshop practice, long rateCentsPerH) {
        Map<WorkStage, Integer> minutes = new EnumMap<>(WorkStage.class);
        plan.tasks().stream()
                .filter(t -> t.handsMin() > 0)
                .forEach(t -> minutes.merge(t.stage(), t.handsMin(), Integer::sum));
        List<Line> lines = new ArrayList<>();
        long likely = 0;
        long squares = 0;
        long cents = 0;
        for (Map.Entry<WorkStage, Integer> stage : minutes.entrySet()) {
            Workshop.SpreadOf spread = practice.spread(stage.getKey());
            StageHours hours =
                    StageHours.of(stage.getKey(), stage.getValue(), spread.lowPercent(), spread.highPercent());
            long its = half(hours.likelySixthMin() * rateCentsPerH, (long) StageHours.SIXTHS * MIN_PER_H);
            lines.add(new Line(hours, its));
            likely += hours.likelySixthMin();
            squares += hours.spreadSixthMin() * hours.spreadSixthMin();
            cents += its;
        }
        double spreadMin = practice.offer().spreadFactor() * Math.sqrt((double) squares) / StageHours.SIXTHS;
        int quoted = (int) Math.ceil((double) likely / StageHours.SIXTHS + spreadMin);
        long whole = half(quoted * rateCentsPerH, MIN_PER_H);
        return new Labour(
                lines, plan.handsMin(), quoted, half(plan.handsMin() * rateCentsPerH, MIN_PER_H), whole - cents);
    }

    /** A quotient, half up. */
    static long half(long over, long under) {
        return Math.floorDiv(2 * over + under, 2 * under);
    }

    /** All labour, cents. */
    public long cents() {
        return lines.stream().mapToLong(Line::cents).sum() + spreadCents;
    }
}
