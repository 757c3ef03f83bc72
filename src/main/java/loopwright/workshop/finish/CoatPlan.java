package loopwright.workshop.finish;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import loopwright.catalog.standard.Finishing.Coats;
import loopwright.catalog.standard.Finishing.Minutes;
import loopwright.catalog.standard.Finishing.PaintSystem;
import loopwright.catalog.standard.Finishing.Product;
import loopwright.catalog.standard.Finishing.Step;

/**
 * The planned coats of a paint system one by one, and what passes between them.
 *
 * @param testMin minutes that the test piece lies before anything is painted
 * @param prepMin minutes of pauses before the first coat
 */
public record CoatPlan(int testMin, int prepMin, List<Coat> coats) {

    /** Nothing is known of the coats. */
    public static final CoatPlan NONE = new CoatPlan(0, 0, List.of());

    /** Copies. */
    public CoatPlan {
        coats = List.copyOf(coats);
    }

    /**
     * One coat.
     *
     * @param flashMin to the next coat
     * @param dryMin before it may be sanded, where what comes next is not sprayed over it as it is
     * @param last whether what comes next is not sprayed over it as it is: it is sanded, or nothing comes
     */
    public record Coat(Product product, int flashMin, int dryMin, boolean last) {}

    /** The coats of a system, with one side of each band of minutes. */
    public static CoatPlan of(PaintSystem system, ToIntFunction<Minutes> side) {
        List<Step> steps = system.steps();
        int test = 0;
        int prep = 0;
        List<Coat> coats = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            int pause = minutes(step.pause(), side);
            if (step.product().isEmpty()) {
                test += i == 0 ? pause : 0;
                prep += i > 0 && coats.isEmpty() ? pause : 0;
                continue;
            }
            boolean goesOn = i + 1 < steps.size() && steps.get(i + 1).product().isPresent();
            int flash = minutes(step.flash(), side);
            int planned = step.coats().map(Coats::planned).orElse(1);
            for (int coat = 1; coat <= planned; coat++) {
                boolean last = coat == planned && !goesOn;
                coats.add(new Coat(step.product().get(), flash, last ? pause : 0, last));
            }
        }
        return new CoatPlan(test, prep, coats);
    }

    private static int minutes(Optional<Minutes> band, ToIntFunction<Minutes> side) {
        return band.map(side::applyAsInt).orElse(0);
    }

    /** Minutes of flash in which somebody stands by. */
    public static int flashMin(List<Coat> coats) {
        return coats.stream().filter(c -> !c.last()).mapToInt(Coat::flashMin).sum();
    }

    /** All minutes in which nothing is sprayed; cure not included. */
    public int waitMin() {
        return testMin
                + prepMin
                + flashMin(coats)
                + coats.stream().mapToInt(Coat::dryMin).sum();
    }
}
