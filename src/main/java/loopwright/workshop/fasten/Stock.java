package loopwright.workshop.fasten;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import loopwright.catalog.part.Screw;
import loopwright.catalog.part.ScrewThread;
import loopwright.catalog.standard.Fastening;
import loopwright.workshop.fasten.LengthChoice.Fits;
import loopwright.workshop.fasten.LengthChoice.Padded;
import loopwright.workshop.fasten.LengthChoice.Refused;

/** The pan head screws that can be had, and the one of them that is taken: nearest to the middle of its window. */
final class Stock {

    /** Washers under one head; more than two slip. Common practice, no source. */
    private static final int WASHERS_MOST = 2;

    private final List<Screw> all;
    private final Fastening practice;

    Stock(List<Screw> screws, Fastening practice) {
        this.all = screws.stream()
                .filter(s -> s.head() == Screw.Head.PAN && !s.lengthMm().isUnknown())
                .sorted(Comparator.comparingInt(Stock::lengthHmm).thenComparing(Screw::id))
                .toList();
        this.practice = practice;
    }

    static int lengthHmm(Screw screw) {
        return screw.lengthMm().valueHmm();
    }

    /** The screw of exactly this length. */
    Optional<Screw> find(ScrewThread thread, int lengthHmm) {
        return of(thread).stream().filter(s -> lengthHmm(s) == lengthHmm).findFirst();
    }

    /** A screw inside the window, or what is nearest to it. */
    LengthChoice choose(ScrewThread thread, LengthWindow window) {
        List<Screw> inside = inside(thread, window);
        if (!inside.isEmpty()) {
            Screw best = nearestMiddle(inside, window);
            return new Fits(best, inside.stream().filter(s -> !s.equals(best)).toList());
        }
        List<Screw> mine = of(thread);
        Optional<Screw> shorter =
                mine.stream().filter(s -> lengthHmm(s) < window.leastHmm()).reduce((a, b) -> b);
        Optional<Screw> longer = mine.stream()
                .filter(s -> lengthHmm(s) > window.mostHmm() && lengthHmm(s) >= window.leastHmm())
                .findFirst();
        return new Refused(shorter, longer, padded(thread, window));
    }

    private Optional<Padded> padded(ScrewThread thread, LengthWindow window) {
        OptionalInt washerHmm = practice.washers().stream()
                .filter(w -> w.thread() == thread)
                .mapToInt(w -> w.thicknessMm().valueHmm())
                .findFirst();
        for (int count = 1; washerHmm.isPresent() && count <= WASHERS_MOST; count++) {
            LengthWindow over = window.with(count * washerHmm.getAsInt());
            List<Screw> inside = inside(thread, over);
            if (!inside.isEmpty()) {
                return Optional.of(new Padded(nearestMiddle(inside, over), count, washerHmm.getAsInt()));
            }
        }
        return Optional.empty();
    }

    private List<Screw> of(ScrewThread thread) {
        return all.stream().filter(s -> s.thread() == thread).toList();
    }

    private List<Screw> inside(ScrewThread thread, LengthWindow window) {
        return of(thread).stream().filter(s -> window.holds(lengthHmm(s))).toList();
    }

    /** Ties go to the shorter one, which stays farther from the tube. */
    private static Screw nearestMiddle(List<Screw> inside, LengthWindow window) {
        int twiceMiddle = window.leastHmm() + window.mostHmm();
        return inside.stream()
                .min(Comparator.comparingInt(s -> Math.abs(2 * lengthHmm(s) - twiceMiddle)))
                .orElseThrow();
    }
}
