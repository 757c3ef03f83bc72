package loopwright.catalog.basis;

import java.util.EnumSet;

/**
 * Where a part's own frame (length, width, height) sits in the chassis: its corner, and the way each local axis points.
 *
 * @param corner chassis coordinates of the part's local origin
 * @param length the way the first local axis points
 * @param width the way the second points
 * @param height the way the third points
 */
public record Pose(Point corner, Heading length, Heading width, Heading height) {
    /** Refuses two local axes along one chassis axis. */
    public Pose {
        if (EnumSet.of(length.axis(), width.axis(), height.axis()).size() != 3) {
            throw new IllegalArgumentException("length, width and height must point along three different axes");
        }
    }
}
