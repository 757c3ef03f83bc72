package loopwright.rank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Keeps the first build that keeps the limits, and wants no other. */
final class Any implements Goal {

    private final List<Build> first = new ArrayList<>();

    @Override
    public boolean isHopeless(String parts, Bound bound) {
        return !first.isEmpty();
    }

    @Override
    public boolean wantsEveryDuty() {
        return false;
    }

    @Override
    public void offer(String parts, Build.Outcome outcome, Supplier<Build> build) {
        if (first.isEmpty()) {
            first.add(build.get());
        }
    }

    Optional<Build> found() {
        return first.stream().findFirst();
    }
}
