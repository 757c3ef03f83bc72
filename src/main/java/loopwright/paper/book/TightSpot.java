package loopwright.paper.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.fit.Gap;
import loopwright.fit.StandingBody;
import loopwright.geometry.SpaceBox;
import loopwright.geometry.SpaceBox.Reach;

/**
 * Where on a drawing a gap lies: between which two boxes, along which axis.
 *
 * @param fromHmm the near face of the one, along the axis
 * @param toHmm the near face of the other
 */
record TightSpot(Gap gap, Axis axis, int fromHmm, int toHmm, SpaceBox one, SpaceBox other) {

    /** The tightest gaps between two boxes, at most so many; those to a wall are left to the list. */
    static List<TightSpot> of(List<Gap> gaps, List<StandingBody> bodies, int most) {
        List<TightSpot> out = new ArrayList<>();
        for (Gap gap : gaps) {
            find(gap, bodies).ifPresent(out::add);
            if (out.size() == most) {
                break;
            }
        }
        return out;
    }

    private static Optional<TightSpot> find(Gap gap, List<StandingBody> bodies) {
        for (SpaceBox one : named(gap.one(), bodies)) {
            for (SpaceBox other : named(gap.other(), bodies)) {
                for (Axis axis : Axis.values()) {
                    Reach a = one.along(axis);
                    Reach b = other.along(axis);
                    if (b.from() - a.to() == gap.clearanceHmm()) {
                        return Optional.of(new TightSpot(gap, axis, a.to(), b.from(), one, other));
                    }
                    if (a.from() - b.to() == gap.clearanceHmm()) {
                        return Optional.of(new TightSpot(gap, axis, b.to(), a.from(), one, other));
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static List<SpaceBox> named(String what, List<StandingBody> bodies) {
        return bodies.stream()
                .flatMap(b -> b.boxes().stream())
                .filter(box -> box.what().equals(what))
                .toList();
    }

    /** A coordinate along another axis at which both can be seen. */
    int besideHmm(Axis other) {
        Reach a = one.along(other);
        Reach b = this.other.along(other);
        int from = Math.max(a.from(), b.from());
        int to = Math.min(a.to(), b.to());
        return from <= to ? (from + to) / 2 : (a.from() + a.to()) / 2;
    }
}
