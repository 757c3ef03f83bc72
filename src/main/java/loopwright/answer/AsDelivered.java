package loopwright.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import loopwright.answer.Unlocks.RadiatorClass;
import loopwright.fit.FitCase;
import loopwright.fit.FitSearch;
import loopwright.fit.MountFrame;
import loopwright.fit.MountHindrance;
import loopwright.fit.Shape;
import loopwright.fit.Shortfalls;
import loopwright.fit.Shortfalls.Shortfall;

/** What keeps radiators from the mounts of a chassis as delivered. */
public final class AsDelivered {

    private final FitCase fitCase;
    private final FitSearch search;
    private final Shortfalls shortfalls;

    AsDelivered(FitCase fitCase) {
        this.fitCase = fitCase;
        this.search = new FitSearch(fitCase, UnlockAnswer.without(fitCase), () -> false);
        this.shortfalls = new Shortfalls(search);
    }

    /**
     * What keeps every radiator from a mount.
     *
     * @param text what is in the way, or why none can hang
     * @param nearest the class that lacks least; absent when none can hang
     * @param shortfallHmm what it lacks
     */
    public record Reason(String text, Optional<RadiatorClass> nearest, int shortfallHmm) {}

    Reason whyNothing(MountFrame frame) {
        SortedMap<RadiatorClass, List<Shape>> classes = new TreeMap<>();
        for (Shape shape : fitCase.shapes().all()) {
            classes.computeIfAbsent(new RadiatorClass(shape.pattern(), shape.thicknessHmm()), c -> new ArrayList<>())
                    .add(shape);
        }
        Optional<Reason> best = Optional.empty();
        for (var one : classes.entrySet()) {
            Shortfall lacks = shortfalls.of(frame, one.getValue());
            int soFar = best.map(Reason::shortfallHmm).orElse(Integer.MAX_VALUE);
            if (lacks.shortfallHmm().filter(s -> s < soFar).isPresent()) {
                best = Optional.of(new Reason(
                        lacks.blockedBy(),
                        Optional.of(one.getKey()),
                        lacks.shortfallHmm().get()));
            }
        }
        return best.orElseGet(() -> new Reason(hindrance(frame), Optional.empty(), 0));
    }

    private String hindrance(MountFrame frame) {
        return MountHindrance.of(search).stream()
                .filter(h -> h.mount().equals(frame.mount().id()))
                .map(MountHindrance::text)
                .findFirst()
                .orElseThrow();
    }
}
