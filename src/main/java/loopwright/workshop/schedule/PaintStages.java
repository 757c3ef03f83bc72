package loopwright.workshop.schedule;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import loopwright.catalog.standard.Finishing;
import loopwright.catalog.standard.Finishing.Minutes;
import loopwright.catalog.standard.Finishing.Product;
import loopwright.catalog.standard.Finishing.Surface;
import loopwright.catalog.standard.WorkStage;
import loopwright.workshop.finish.CoatPlan;
import loopwright.workshop.finish.CoatPlan.Coat;

/**
 * The coats of parts that are painted together, by the stage they belong to; of several surfaces, those that wait longest. Waits
 * are the longest of their bands: none is planned too short.
 */
record PaintStages(CoatPlan plan) {

    static PaintStages of(Finishing practice, Collection<Surface> surfaces) {
        return new PaintStages(practice.systems().stream()
                .filter(s -> surfaces.contains(s.surface()))
                .map(s -> CoatPlan.of(s, Minutes::highMin))
                .max(Comparator.comparing(CoatPlan::waitMin))
                .orElse(CoatPlan.NONE));
    }

    private static WorkStage stage(Product product) {
        return switch (product) {
            case METAL_PRIMER, PROMOTER, FILLER -> WorkStage.PRIME;
            case COLOUR -> WorkStage.COLOUR;
            case CLEAR, BACKING -> WorkStage.CLEAR;
        };
    }

    /** The coats of a stage. */
    List<Coat> coats(WorkStage stage) {
        return plan.coats().stream().filter(c -> stage(c.product()) == stage).toList();
    }

    /** The coats of the test piece: all in one go, the flash of each but the last. */
    List<Coat> testCoats() {
        List<Coat> out = new ArrayList<>();
        for (int i = 0; i < plan.coats().size(); i++) {
            Coat coat = plan.coats().get(i);
            out.add(new Coat(
                    coat.product(), coat.flashMin(), 0, i == plan.coats().size() - 1));
        }
        return out;
    }

    /** Minutes of each stage that is sprayed; those of a stage without coats go to the colour. */
    Map<WorkStage, Integer> sprayed(Map<WorkStage, Integer> minutes) {
        Map<WorkStage, Integer> out = new EnumMap<>(WorkStage.class);
        minutes.forEach((stage, min) -> {
            boolean before = stage.compareTo(WorkStage.PRIME) < 0;
            boolean bare = coats(stage).isEmpty() && !plan.coats().isEmpty();
            if (!before) {
                out.merge(bare ? WorkStage.COLOUR : stage, min, Integer::sum);
            }
        });
        return out;
    }

    /** Whether the next stage goes on over a stage's last coat as it is. */
    boolean goesOn(WorkStage stage) {
        List<Coat> coats = coats(stage);
        return !coats.isEmpty() && !coats.get(coats.size() - 1).last();
    }

    /** Minutes before a stage's last coat may be sanded. */
    int dryMin(WorkStage stage) {
        return coats(stage).stream().mapToInt(Coat::dryMin).max().orElse(0);
    }
}
