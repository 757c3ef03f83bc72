package loopwright.loop.study;

import java.util.Comparator;
import java.util.Optional;
import java.util.PriorityQueue;
import loopwright.loop.SoundPower;

/**
 * The quietest duties that hold limits, in whole percent: boxes of duties, the one with the quietest corner first.
 *
 * <p>Sound rises with each duty, so a box whose quietest corner is louder than what is known need not be looked at, and a box
 * whose quietest corner holds is done. {@link BestCase} drops boxes that cannot hold and narrows the others. What is left when
 * no box is quiet enough is the quietest of all; of equals, the first in the order of duties.
 */
final class QuietSearch {

    /** Steps of the walk down that finds a first answer, percent. */
    private static final int[] STEPS = {16, 8, 4, 2, 1};

    /** Narrower ranges are left to be halved, percent: so many more boxes cost less than the questions. */
    private static final int NARROW_PERCENT = 3;

    private final Motors motors;
    private final SpeedLimits limits;
    private final BestCase best;

    QuietSearch(Motors motors, SpeedLimits limits) {
        this.motors = motors;
        this.limits = limits;
        this.best = new BestCase(motors, limits);
    }

    private record Loud(Duties duties, SoundPower sound) {
        boolean isBefore(Loud other) {
            int order = sound.compareTo(other.sound);
            return order < 0 || (order == 0 && duties.compareTo(other.duties) < 0);
        }
    }

    /** A box and the sound of its quietest corner. */
    private record Waiting(DutyBox box, SoundPower least) {}

    /** The duties; empty when none hold. */
    Optional<Duties> find() {
        DutyBox all = motors.all();
        Optional<Loud> known = holds(all.high()) ? Optional.of(walkDown(all)) : Optional.empty();
        PriorityQueue<Waiting> waiting = new PriorityQueue<>(Comparator.comparing(Waiting::least)
                .thenComparing(w -> w.box().low())
                .thenComparing(w -> w.box().high()));
        add(all, known, waiting);
        while (!waiting.isEmpty()) {
            Waiting next = waiting.remove();
            if (known.isPresent() && next.least().compareTo(known.get().sound()) > 0) {
                break;
            }
            DutyBox box = next.box();
            if (holds(box.low())) {
                Loud found = new Loud(box.low(), next.least());
                known = known.isPresent() && !found.isBefore(known.get()) ? known : Optional.of(found);
                continue;
            }
            int widest = box.widest();
            if (box.width(widest) > 0) {
                add(box.upTo(widest, box.middle(widest)), known, waiting);
                add(box.from(widest, box.middle(widest) + 1), known, waiting);
            }
        }
        return known.map(Loud::duties);
    }

    private boolean holds(Duties duties) {
        return motors.solve(duties)
                .filter(s -> limits.hold(motors.machine(duties), s))
                .isPresent();
    }

    private void add(DutyBox box, Optional<Loud> known, PriorityQueue<Waiting> waiting) {
        Optional<DutyBox> quiet =
                known.isPresent() ? quietEnough(box, known.get().sound()) : Optional.of(box);
        if (quiet.isEmpty() || !best.mayHold(quiet.get())) {
            return;
        }
        DutyBox narrow = quiet.get();
        for (int i = 0; i <= motors.pump(); i++) {
            while (narrow.width(i) > NARROW_PERCENT && !best.mayHold(narrow.upTo(i, narrow.middle(i)))) {
                narrow = narrow.from(i, narrow.middle(i) + 1);
            }
        }
        waiting.add(new Waiting(narrow, motors.sound(narrow.low())));
    }

    /** The part of a box in which a motor alone does not make it louder than what is known. */
    private Optional<DutyBox> quietEnough(DutyBox box, SoundPower most) {
        long left = most.millionths() - motors.sound(box.low()).millionths();
        if (left < 0) {
            return Optional.empty();
        }
        DutyBox out = box;
        for (int i = 0; i <= motors.pump(); i++) {
            long own = motors.sound(i, box.low().at(i)).millionths();
            int high = box.high().at(i);
            while (motors.sound(i, high).millionths() - own > left) {
                high--;
            }
            out = out.upTo(i, high);
        }
        return Optional.of(out);
    }

    /** From full speed down, each time by the motor that makes it quietest and still holds. */
    private Loud walkDown(DutyBox all) {
        Loud at = new Loud(all.high(), motors.sound(all.high()));
        for (int step : STEPS) {
            Optional<Loud> next = quieter(at, step, all);
            while (next.isPresent()) {
                at = next.get();
                next = quieter(at, step, all);
            }
        }
        return at;
    }

    private Optional<Loud> quieter(Loud at, int step, DutyBox all) {
        Optional<Loud> quietest = Optional.empty();
        for (int i = 0; i <= motors.pump(); i++) {
            int percent = at.duties().at(i) - step;
            if (percent < all.low().at(i)) {
                continue;
            }
            Duties duties = at.duties().with(i, percent);
            Loud next = new Loud(duties, motors.sound(duties));
            if ((quietest.isEmpty() || next.isBefore(quietest.get())) && holds(duties)) {
                quietest = Optional.of(next);
            }
        }
        return quietest;
    }
}
