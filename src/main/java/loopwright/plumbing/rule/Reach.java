package loopwright.plumbing.rule;

import loopwright.catalog.basis.Axis;
import loopwright.plumbing.LoopPlan;
import loopwright.plumbing.Port;
import loopwright.plumbing.route.Solid;
import loopwright.plumbing.route.Space;
import loopwright.plumbing.route.Where;

/**
 * How far it is free in front of a port, as wide as a fitting.
 *
 * @param until what is met first
 */
record Reach(int freeHmm, String until) {

    static Reach from(LoopPlan plan, Port port) {
        Space space = plan.materials().space();
        int radius = plan.materials().shape().straight().radius();
        Axis axis = port.out().axis();
        int sign = port.out().sign();
        int wall = sign > 0 ? space.size().along(axis) : 0;
        int nearest = sign * (wall - port.at().along(axis));
        String until = "the wall";
        Where far = port.at().with(axis, wall);
        Solid tunnel = Solid.sleeve("", port.at(), far, radius);
        for (Solid solid : space.solids()) {
            if (solid.meets(tunnel)) {
                int face = sign > 0 ? solid.low().along(axis) : solid.high().along(axis);
                int way = Math.max(0, sign * (face - port.at().along(axis)));
                if (way < nearest) {
                    nearest = way;
                    until = solid.body();
                }
            }
        }
        return new Reach(Math.max(0, nearest), until);
    }
}
