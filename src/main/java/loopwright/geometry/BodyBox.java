package loopwright.geometry;

import java.util.List;
import java.util.stream.Stream;
import loopwright.catalog.basis.Axis;

/**
 * One box of a body.
 *
 * @param what the part of the body it is, in the builder's words: {@code radiator}, {@code supply plug}
 * @param fill solid, or room that is kept free
 * @param need gap it wants to a foreign body
 */
public record BodyBox(String what, Fill fill, Sum need, Edges x, Edges y, Edges z) {

    /** What a box is made of. */
    public enum Fill {
        /** Matter. */
        SOLID,
        /** Space kept free: it may overlap other such space, but nothing solid. */
        ROOM
    }

    /** Its reach along an axis. */
    public Edges along(Axis axis) {
        return switch (axis) {
            case X -> x;
            case Y -> y;
            case Z -> z;
        };
    }

    /** Names of the dimensions in it that are not known. */
    public List<String> unknowns() {
        return Stream.of(need, x.from(), x.to(), y.from(), y.to(), z.from(), z.to())
                .flatMap(sum -> sum.unknowns().stream())
                .distinct()
                .toList();
    }
}
