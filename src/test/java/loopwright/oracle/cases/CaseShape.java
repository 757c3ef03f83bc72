package loopwright.oracle.cases;

import java.util.List;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;

/** Which mounts a case has and how their stacks meet. */
@SuppressWarnings("ImmutableEnumChecker") // the lists are List.of: immutable in fact
enum CaseShape {
    /** Roof and floor overlap in height and follow each other from front to rear. */
    ROOF_FLOOR(List.of(Face.ROOF, Face.FLOOR), List.of(Face.FRONT, Face.REAR)),
    /** Roof and left side share an edge and follow each other from front to rear. */
    ROOF_SIDE(List.of(Face.ROOF, Face.LEFT), List.of(Face.FRONT, Face.REAR)),
    /** Three in a row from front to rear. */
    ROOF_SIDE_FLOOR(List.of(Face.ROOF, Face.LEFT, Face.FLOOR), List.of(Face.FRONT, Face.RIGHT, Face.REAR)),
    /** A corner: past each other in depth or in height. */
    ROOF_FRONT(List.of(Face.ROOF, Face.FRONT), List.of(Face.REAR, Face.FLOOR)),
    /** A corner below. */
    FRONT_FLOOR(List.of(Face.FRONT, Face.FLOOR), List.of(Face.ROOF, Face.REAR)),
    /** A corner behind. */
    ROOF_REAR(List.of(Face.ROOF, Face.REAR), List.of(Face.FRONT, Face.FLOOR)),
    /** A corner in which they pass beside each other. */
    ROOF_FRONT_BESIDE(List.of(Face.ROOF, Face.FRONT), List.of(Face.REAR, Face.FLOOR));

    /** Panels, in the order of the mounts. */
    final List<Face> faces;

    /** The wall each stack is pushed against; RIGHT for one in the middle. */
    final List<Face> pins;

    CaseShape(List<Face> faces, List<Face> pins) {
        this.faces = faces;
        this.pins = pins;
    }

    boolean isRow() {
        return this == ROOF_FLOOR || this == ROOF_SIDE || this == ROOF_SIDE_FLOOR;
    }

    static Axis lengthwise(Face face) {
        return face == Face.FRONT || face == Face.REAR ? Axis.Z : Axis.Y;
    }
}
