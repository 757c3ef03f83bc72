package loopwright.plumbing.route;

import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.basis.Heading;

/**
 * One way to leave a port: straight, or through an elbow that is turned to a side.
 *
 * @param end the port
 * @param elbow where the elbow's axes cross; absent without one
 * @param mouth where the tube comes out of its fitting
 * @param heading the way it comes out
 * @param fittings the room that the fittings take
 * @param costHmm what the elbow counts
 */
record Leave(
        End end, java.util.Optional<Where> elbow, Where mouth, Heading heading, List<Solid> fittings, int costHmm) {

    /** What the fittings of a run are called. */
    static final String FITTING = "fitting";

    /** Length from the port's face to the fitting's mouth, along the axes. */
    int lengthHmm() {
        return elbow.map(e -> end.at().wayTo(e) + e.wayTo(mouth))
                .orElseGet(() -> end.at().wayTo(mouth));
    }

    /** Every way for which there is room, the straight one first. */
    static List<Leave> of(End end, TubeShape tube, Space space) {
        List<Leave> out = new ArrayList<>();
        Where mouth = end.at().towards(end.out(), tube.straight().height());
        Solid fitting = Solid.sleeve(FITTING, end.at(), mouth, tube.straight().radius());
        if (space.takes(fitting)) {
            out.add(new Leave(end, java.util.Optional.empty(), mouth, end.out(), List.of(fitting), 0));
        }
        tube.elbow().ifPresent(elbow -> addElbows(out, end, tube, elbow, space));
        return out;
    }

    private static void addElbows(List<Leave> out, End end, TubeShape tube, TubeShape.Fitting elbow, Space space) {
        Where corner = end.at().towards(end.out(), elbow.height());
        Solid body = Solid.sleeve(FITTING, end.at(), corner.towards(end.out(), elbow.radius()), elbow.radius());
        if (!space.takes(body)) {
            return;
        }
        for (Heading side : Heading.values()) {
            if (side.axis() != end.out().axis()) {
                Where mouth = corner.towards(side, tube.straight().height());
                Solid straight =
                        Solid.sleeve(FITTING, corner, mouth, tube.straight().radius());
                // beside the port the fitting may reach below the face: its own part stops it there
                if (space.takes(straight)) {
                    out.add(new Leave(
                            end, java.util.Optional.of(corner), mouth, side, List.of(body, straight), elbow.asTube()));
                }
            }
        }
    }
}
