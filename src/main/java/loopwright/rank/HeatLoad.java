package loopwright.rank;

import java.util.OptionalDouble;
import loopwright.fit.FitCase;
import loopwright.fit.PartSet;

/** Heat into the coolant at full load, W. */
public final class HeatLoad {

    private HeatLoad() {}

    /** The least of any choice of parts that goes together; empty when none does. */
    public static OptionalDouble leastW(FitCase fitCase) {
        return PartSet.all(fitCase).stream()
                .flatMap(s -> s.choices().stream())
                .mapToDouble(Cores::heatW)
                .min();
    }
}
