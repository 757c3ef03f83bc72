package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.answer.InspectAnswer;
import loopwright.answer.NextSteps;
import loopwright.answer.NextSteps.Step;
import loopwright.catalog.brief.Brief;

/** What single changes of a build gain and cost. */
final class InspectStepLines {

    /** Gains shown, the largest; and losses shown, the smallest a saving. */
    private static final int SHOWN = 14;

    /** A gain that is told apart from nothing, K. */
    private static final double LEAST_K = 0.05;

    private static final double CENTS = 100;
    private static final int MIN_PER_H = 60;

    private InspectStepLines() {}

    static List<String> of(InspectAnswer answer) {
        NextSteps steps = answer.steps();
        Brief brief = answer.inspection().fitCase().brief();
        List<String> out = new ArrayList<>();
        List<Step> gains =
                steps.all().stream().filter(s -> s.gainK() >= LEAST_K).toList();
        out.addAll(table(gains.stream().limit(SHOWN).toList(), brief));
        if (gains.size() > SHOWN) {
            out.add((gains.size() - SHOWN) + " more gain less: --format csv lists them all.");
        }
        List<Step> savings = steps.all().stream()
                .filter(s -> s.gainK() < LEAST_K && (s.costCents() < 0 || s.noiseDB() <= -1))
                .sorted(java.util.Comparator.comparingDouble(Step::gainK).reversed())
                .limit(SHOWN / 2)
                .toList();
        if (!savings.isEmpty()) {
            out.add("");
            out.add("Cheaper or quieter, and what that costs in kelvin:");
            out.addAll(table(savings, brief));
        }
        out.add("");
        for (double kelvin : List.of(1.0, 2.0)) {
            out.addAll(Lines.wrap(
                    "cheapest " + Mm.rounded(kelvin, 0) + " K: ", cheapest(steps.cheapestGain(kelvin), brief)));
        }
        for (NextSteps.Enough enough : steps.openEnough()) {
            out.addAll(Lines.wrap(
                    enough.mount() + ": ",
                    "is " + Mm.rounded(enough.openShare(), 2) + " open; "
                            + enough.enough()
                                    .map(s ->
                                            "from " + Mm.rounded(s, 2) + " on it loses less than 5 % against cut away")
                                    .orElse("cut away it does not cool either")));
        }
        return out;
    }

    private static String cheapest(Optional<Step> step, Brief brief) {
        return step.map(s -> s.what() + ": " + Mm.rounded(s.gainK(), 1) + " +-"
                        + Mm.rounded(s.gainBand().halfK(), 1)
                        + " K for " + RankWords.money(s.costCents(), brief) + ", "
                        + hours(s) + " h, " + decibels(s) + " dB")
                .orElse("no single change gains that much");
    }

    private static List<String> table(List<Step> steps, Brief brief) {
        Columns table = Columns.headed("K cooler", "+-", brief.terms().currency(), "hours", "dB", "key", "change");
        for (Step step : steps) {
            table.row(
                    Mm.rounded(step.gainK(), 1).toPlainString(),
                    Mm.rounded(step.gainBand().halfK(), 1).toPlainString(),
                    Mm.rounded(step.costCents() / CENTS, 0).toPlainString(),
                    hours(step),
                    decibels(step),
                    step.build().key(),
                    step.what());
        }
        return table.lines("");
    }

    private static String hours(Step step) {
        return Mm.rounded(step.labourMin() / (double) MIN_PER_H, 1).toPlainString();
    }

    private static String decibels(Step step) {
        return Mm.rounded(step.noiseDB(), 1).toPlainString();
    }
}
