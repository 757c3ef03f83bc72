package loopwright.workshop.template;

import java.util.Optional;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.standard.Cutting;
import loopwright.fit.Arrangement;
import loopwright.fit.MountFrame;
import loopwright.fit.PortEnd;
import loopwright.fit.Shape;
import loopwright.quantity.Hundredths;
import loopwright.workshop.drawing.Dot;

/** Holes through which the ports of a radiator in a raised cover reach inside. */
record PortHoles(Setting setting, MountFrame frame, PanelView view, Holes out) {

    /** Holes under a cover, if what hangs there has its radiator in it. */
    void of(Lid lid, Optional<Setting.Hung> hung) {
        Optional<Shape> shape =
                hung.flatMap(Setting.Hung::shape).filter(s -> s.arrangement() == Arrangement.COVER_RADIATOR);
        if (shape.isEmpty()) {
            return;
        }
        int size = Cutting.hmm(setting.cutting().portHoleMm());
        for (Radiator.Port port : shape.get().outline().ports()) {
            if (port.face() == Radiator.PortFace.BROAD) {
                Dot dot = centre(Seated.of(hung.get()), shape.get(), port);
                out.holes()
                        .add(new Hole.Round(
                                new Hole.Tag("", Hole.Purpose.PORT, lid.mod().id(), "port and grommet"), dot, size));
            }
        }
    }

    private Dot centre(Seated place, Shape shape, Radiator.Port port) {
        int half = shape.pattern().fans() * shape.pattern().sizeMm() * Hundredths.PER_MM / 2;
        int along = half + port.fromFanAreaMm().valueHmm();
        int way = shape.portEnd() == PortEnd.HIGH ? 1 : -1;
        return place.dot(frame, view, way * along, port.asideMm().valueHmm());
    }
}
