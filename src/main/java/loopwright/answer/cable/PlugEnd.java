package loopwright.answer.cable;

import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Heading;
import loopwright.catalog.basis.Pose;
import loopwright.catalog.part.Plug;
import loopwright.power.cable.PointHmm;

/**
 * Where a plug sits.
 *
 * @param plug which
 * @param name what it belongs to, in the builder's words
 * @param face the middle of the face it sits on
 * @param out the way its wires leave it
 */
record PlugEnd(Plug plug, String name, PointHmm face, Heading out) {

    /** A point of a part's own frame in the chassis. */
    static PointHmm point(Pose pose, int lengthHmm, int widthHmm, int heightHmm) {
        return new PointHmm(
                along(pose, Axis.X, lengthHmm, widthHmm, heightHmm),
                along(pose, Axis.Y, lengthHmm, widthHmm, heightHmm),
                along(pose, Axis.Z, lengthHmm, widthHmm, heightHmm));
    }

    private static int along(Pose pose, Axis axis, int lengthHmm, int widthHmm, int heightHmm) {
        int corner = pose.corner().along(axis).valueHmm();
        if (pose.length().axis() == axis) {
            return corner + pose.length().sign() * lengthHmm;
        }
        return pose.width().axis() == axis
                ? corner + pose.width().sign() * widthHmm
                : corner + pose.height().sign() * heightHmm;
    }
}
