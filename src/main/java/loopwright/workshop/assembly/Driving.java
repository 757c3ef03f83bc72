package loopwright.workshop.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.standard.Fastening.Driver;
import loopwright.geometry.SpaceBox;
import loopwright.plumbing.route.Solid;
import loopwright.plumbing.route.Where;

/**
 * A straight driver at a screw.
 *
 * @param shaft from the screw's head to the hand
 * @param hand handle and hand, from where they are when the screw is home to where they are when it is out
 * @param outside the face that the screw is driven from outside the chassis; empty: from inside
 */
record Driving(SpaceBox shaft, SpaceBox hand, Optional<Face> outside) {

    /**
     * A screw.
     *
     * @param head where its head lies when it is home
     * @param away the way the driver stands off
     * @param lengthHmm by which its head stands off when it is out
     */
    record Screw(Where head, Face away, int lengthHmm) {
        private Where off(int byHmm) {
            Axis axis = away.normal();
            return head.with(axis, head.along(axis) + (away.isHigh() ? byHmm : -byHmm));
        }
    }

    /** A screw with each of the drivers whose sizes are known. */
    static List<Driving> of(Screw screw, List<Driver> drivers, Hall hall) {
        int at = screw.head().along(screw.away().normal());
        boolean outside = screw.away().isHigh()
                ? at >= hall.along(screw.away().normal()).to()
                : at <= hall.along(screw.away().normal()).from();
        Optional<Face> face = outside ? Optional.of(screw.away()) : Optional.empty();
        List<Driving> out = new ArrayList<>();
        for (Driver driver : drivers) {
            boolean known = !driver.shaftMm().isUnknown()
                    && !driver.shaftAcrossMm().isUnknown()
                    && !driver.handMm().isUnknown()
                    && !driver.handAcrossMm().isUnknown();
            if (known) {
                Where grip = screw.off(driver.shaftMm().valueHmm());
                Where end = screw.off(driver.shaftMm().valueHmm()
                        + screw.lengthHmm()
                        + driver.handMm().valueHmm());
                out.add(new Driving(
                        sleeve(screw.head(), grip, driver.shaftAcrossMm().valueHmm()),
                        sleeve(grip, end, driver.handAcrossMm().valueHmm()),
                        face));
            }
        }
        return List.copyOf(out);
    }

    private static SpaceBox sleeve(Where from, Where to, int acrossHmm) {
        return Boxes.of(Solid.sleeve("driver", from, to, acrossHmm / 2));
    }
}
