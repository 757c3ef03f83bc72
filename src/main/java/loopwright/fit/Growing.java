package loopwright.fit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.geometry.SpaceBox;

/**
 * A body by how much it has grown: the body that the part would have if it really were so much larger.
 *
 * <p>Unit: hundredths of a millimetre. As it grows, no edge of any box moves back and forth: between two sizes each box
 * stays within the hull of the two.
 */
final class Growing {

    private final IntFunction<Occupant> body;
    private final Optional<Hanging> hanging;
    private final Axis axis;

    /** Where a stack that grows may hang: its shape decides whether a raised cover takes it. */
    record Hanging(Seating seating, MountFrame frame, IntFunction<Shape> shape, ModSet mods) {}

    /** What the growing body takes, and how it slides where it does. */
    record Form(Occupant occupant, Optional<Hang> hang) {}

    private Growing(IntFunction<Occupant> body, Optional<Hanging> hanging, Axis axis) {
        this.body = body;
        this.hanging = hanging;
        this.axis = axis;
    }

    /** A body that does not slide, and grows along an axis. */
    static Growing still(IntFunction<Occupant> body, Axis axis) {
        return new Growing(body, Optional.empty(), axis);
    }

    /** A stack. */
    static Growing stack(IntFunction<Occupant> body, Hanging hanging) {
        return new Growing(body, Optional.of(hanging), hanging.frame().normal());
    }

    /** The axis it grows along. */
    Axis axis() {
        return axis;
    }

    /**
     * Everything it takes at any growth between two, in each range it may hang in; empty where it cannot hang at all.
     *
     * @param ignored a wall that is taken away for it
     */
    List<Form> forms(int from, int to, Optional<Face> ignored) {
        Occupant hull = hull(body.apply(from), body.apply(to), ignored);
        if (hanging.isEmpty()) {
            return List.of(new Form(hull, Optional.empty()));
        }
        Hanging at = hanging.get();
        // A thicker radiator never has more room in a cover: what takes the last takes all before it.
        Shape last = at.shape().apply(to);
        return at.seating().ranges(at.frame(), last, at.mods()).stream()
                .filter(range -> range.unknowns().isEmpty())
                .map(range -> new Form(hull, Optional.of(new Hang(NO_NUMBER, at.frame(), last, range, hull))))
                .toList();
    }

    /** Growing stacks are not among those whose pairs are kept. */
    private static final int NO_NUMBER = -1;

    private static Occupant hull(Occupant small, Occupant large, Optional<Face> ignored) {
        List<SpaceBox> boxes = new ArrayList<>();
        for (int i = 0; i < large.boxes().size(); i++) {
            SpaceBox a = small.boxes().get(i);
            SpaceBox b = large.boxes().get(i);
            boxes.add(new SpaceBox(
                    b.what(), b.room(), b.needHmm(), hull(a.x(), b.x()), hull(a.y(), b.y()), hull(a.z(), b.z())));
        }
        Set<Face> against = EnumSet.noneOf(Face.class);
        against.addAll(large.against());
        ignored.ifPresent(against::add);
        return new Occupant(
                large.body(), large.group(), Set.copyOf(against), large.touches(), List.copyOf(boxes), List.of());
    }

    private static SpaceBox.Reach hull(SpaceBox.Reach a, SpaceBox.Reach b) {
        return new SpaceBox.Reach(Math.min(a.from(), b.from()), Math.max(a.to(), b.to()));
    }
}
