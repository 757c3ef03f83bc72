package loopwright.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.Radiator.PortFace;
import loopwright.quantity.Dimension;

/**
 * The dimensions of a radiator that decide whether it fits: parts that share them are one shape.
 *
 * @param ports sorted by face, distance and side
 */
public record RadiatorOutline(
        Pattern pattern,
        Dimension width,
        Dimension thickness,
        Dimension portOverhang,
        Dimension blankOverhang,
        List<Radiator.Port> ports) {

    private static final Comparator<Radiator.Port> PORT_ORDER = Comparator.comparing(Radiator.Port::face)
            .thenComparing(p -> p.fromFanAreaMm().valueHmm())
            .thenComparing(p -> p.asideMm().valueHmm());

    /** Sorts the ports. */
    public RadiatorOutline {
        List<Radiator.Port> sorted = new ArrayList<>(ports);
        sorted.sort(PORT_ORDER);
        ports = List.copyOf(sorted);
    }

    /** The outline of a radiator. */
    public static RadiatorOutline of(Radiator radiator) {
        Radiator.Body body = radiator.body();
        return new RadiatorOutline(
                radiator.pattern(),
                body.widthMm(),
                body.thicknessMm(),
                body.portOverhangMm(),
                body.blankOverhangMm(),
                radiator.ports().at());
    }

    /** Everything by value, in hundredths: the text that layouts are told apart by. */
    public String text() {
        StringBuilder out = new StringBuilder()
                .append(pattern)
                .append('/')
                .append(width.valueHmm())
                .append('/')
                .append(thickness.valueHmm())
                .append('/')
                .append(portOverhang.valueHmm())
                .append('/')
                .append(blankOverhang.valueHmm())
                .append('/');
        for (int i = 0; i < ports.size(); i++) {
            Radiator.Port port = ports.get(i);
            out.append(i == 0 ? "" : "+")
                    .append(port.face() == PortFace.BROAD ? "B:" : "E:")
                    .append(port.fromFanAreaMm().valueHmm())
                    .append(':')
                    .append(port.asideMm().valueHmm());
        }
        return out.toString();
    }
}
