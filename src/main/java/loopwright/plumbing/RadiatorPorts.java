package loopwright.plumbing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Heading;
import loopwright.catalog.basis.PartPort.Way;
import loopwright.catalog.part.Radiator;
import loopwright.fit.Arrangement.Layer;
import loopwright.fit.MountFrame;
import loopwright.fit.PortEnd;
import loopwright.fit.Shape;
import loopwright.fit.Witness;
import loopwright.plumbing.route.Where;

/** Where the ports of a hanging radiator are. */
final class RadiatorPorts {

    private final MountFrame frame;
    private final Shape shape;
    private final Witness.At at;
    private final Radiator radiator;

    RadiatorPorts(Witness.At at, Radiator radiator) {
        this.frame = at.stack().frame();
        this.shape = at.stack().shape();
        this.at = at;
        this.radiator = radiator;
    }

    /** Its ports in the order of its file. */
    List<Port> all(String part) {
        List<Port> out = new ArrayList<>();
        List<Radiator.Port> ports = radiator.ports().at();
        for (int i = 0; i < ports.size(); i++) {
            Radiator.Port port = ports.get(i);
            boolean broad = port.face() == Radiator.PortFace.BROAD;
            int sign = shape.portEnd() == PortEnd.LOW ? -1 : 1;
            int reach = broad
                    ? port.fromFanAreaMm().valueHmm()
                    : radiator.body().portOverhangMm().valueHmm();
            int along = at.alongHmm() + sign * (fanAreaHmm() / 2 + reach);
            int aside = at.asideHmm() + port.asideMm().valueHmm();
            Where where = new Where(0, 0, 0)
                    .with(frame.lengthwise(), along)
                    .with(frame.sideways(), aside)
                    .with(
                            frame.normal(),
                            frame.seatPlane().valueHmm() + inwards() * (broad ? broadHmm() : middleHmm()));
            Heading heading = broad ? heading(frame.normal(), inwards()) : heading(frame.lengthwise(), sign);
            out.add(new Port(part, (broad ? "port " : "end port ") + (i + 1), where, heading, Way.EITHER, false));
        }
        return out;
    }

    private int fanAreaHmm() {
        return radiator.pattern().fans() * radiator.pattern().sizeMm() * 100;
    }

    private int inwards() {
        return frame.panel().face().isHigh() ? -1 : 1;
    }

    /** Depth of the radiator's near side from the seat plane; 0 in a raised cover, where ports reach through the panel. */
    private int nearHmm() {
        int depth = frame.gasket().valueHmm();
        for (Layer layer : shape.arrangement().inside()) {
            if (layer == Layer.RADIATOR) {
                return depth;
            }
            depth += shape.fanThickness().valueHmm();
        }
        return 0;
    }

    private int broadHmm() {
        return shape.arrangement().inside().contains(Layer.RADIATOR)
                ? nearHmm() + radiator.body().thicknessMm().valueHmm()
                : 0;
    }

    private int middleHmm() {
        return nearHmm() + radiator.body().thicknessMm().valueHmm() / 2;
    }

    private static Heading heading(Axis axis, int sign) {
        return Arrays.stream(Heading.values())
                .filter(h -> h.axis() == axis && h.sign() == sign)
                .findFirst()
                .orElseThrow();
    }
}
