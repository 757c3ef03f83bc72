package loopwright.workshop.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import loopwright.catalog.standard.WorkStage;
import loopwright.catalog.standard.Workshop;

/** Minutes divided among stages so that they sum to exactly what was given; pieces are whole steps but for one. */
final class Minutes {

    private static final int WHOLE_PERCENT = 100;

    private Minutes() {}

    /** The minutes of each stage, by largest remainder; what is left over a step goes to the largest share. */
    static Map<WorkStage, Integer> divided(int minutes, List<Workshop.Share> shares) {
        int steps = minutes / Clock.STEP_MIN;
        List<Integer> whole = new ArrayList<>();
        for (Workshop.Share share : shares) {
            whole.add(steps * share.sharePercent() / WHOLE_PERCENT);
        }
        int left = steps - whole.stream().mapToInt(Integer::intValue).sum();
        List<Integer> byRemainder = IntStream.range(0, shares.size())
                .boxed()
                .sorted(Comparator.comparing(
                        (Integer i) -> -(steps * shares.get(i).sharePercent() % WHOLE_PERCENT)))
                .toList();
        Map<WorkStage, Integer> out = new EnumMap<>(WorkStage.class);
        for (int i = 0; i < shares.size(); i++) {
            int more = byRemainder.indexOf(i) < left ? 1 : 0;
            out.put(shares.get(i).stage(), (whole.get(i) + more) * Clock.STEP_MIN);
        }
        WorkStage largest = shares.stream()
                .max(Comparator.comparing(Workshop.Share::sharePercent))
                .orElseThrow()
                .stage();
        out.merge(largest, minutes % Clock.STEP_MIN, Integer::sum);
        return out;
    }
}
