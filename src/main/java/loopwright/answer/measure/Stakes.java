package loopwright.answer.measure;

import java.util.List;
import loopwright.catalog.standard.Practice.ClashHours;
import loopwright.catalog.standard.Practice.Stage;
import loopwright.fit.FitCase;

/**
 * What a clash costs when it is found at a stage, in the brief's currency.
 *
 * @param stages from the cheapest to the dearest; none where the practice has none
 */
public record Stakes(List<At> stages) {

    /**
     * A stage.
     *
     * @param lowCents when all goes well
     * @param highCents when it does not
     */
    public record At(Stage stage, long lowCents, long highCents) {

        /** The middle of the two. */
        public double midCents() {
            return (lowCents + highCents) / 2.0;
        }
    }

    /** Copies. */
    public Stakes {
        stages = List.copyOf(stages);
    }

    /** The trade's hours at the brief's rate. */
    static Stakes of(FitCase fitCase) {
        long rate = fitCase.brief().terms().rateCentsPerH();
        List<ClashHours> hours = fitCase.catalog().practice().measuring().clashHours();
        return new Stakes(hours.stream()
                .map(h -> new At(h.stage(), Math.round(h.lowH() * rate), Math.round(h.highH() * rate)))
                .toList());
    }

    /** What is lost when a clash is found after assembly and not on paper, cents; 0 where the practice does not say. */
    public double lateCents() {
        return Math.max(0, mid(Stage.AFTER_ASSEMBLY) - mid(Stage.ON_PAPER));
    }

    private double mid(Stage stage) {
        return stages.stream()
                .filter(s -> s.stage() == stage)
                .mapToDouble(At::midCents)
                .findFirst()
                .orElse(0);
    }
}
