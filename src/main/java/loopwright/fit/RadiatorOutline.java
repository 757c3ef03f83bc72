package loopwright.fit;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.Radiator.PortFace;
import loopwright.quantity.Dimension;

/**
 * The dimensions of a radiator that decide whether it fits: parts that share them are one shape.
 *
 * @param ports in the order of the part's file
 */
public record RadiatorOutline(
        Pattern pattern,
        Dimension width,
        Dimension thickness,
        Dimension portOverhang,
        Dimension blankOverhang,
        List<Radiator.Port> ports) {

    /** Copies. */
    public RadiatorOutline {
        ports = List.copyOf(ports);
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

    /** This outline, each dimension off by what it is off in the worse of two parts that measure the same. */
    RadiatorOutline looser(RadiatorOutline other) {
        return new RadiatorOutline(
                pattern,
                looser(width, other.width),
                looser(thickness, other.thickness),
                looser(portOverhang, other.portOverhang),
                looser(blankOverhang, other.blankOverhang),
                ports);
    }

    /** Of two dimensions of one value the one that may be further off; the first if both may be as far. */
    static Dimension looser(Dimension a, Dimension b) {
        return b.plusMinusHmm() > a.plusMinusHmm() ? b : a;
    }

    /** Everything by value, in hundredths, ports sorted: the text that layouts are told apart by. */
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
        return out.append(ports.stream().map(RadiatorOutline::portText).sorted().collect(Collectors.joining("+")))
                .toString();
    }

    private static String portText(Radiator.Port port) {
        return (port.face() == PortFace.BROAD ? "B:" : "E:")
                + port.fromFanAreaMm().valueHmm() + ":" + port.asideMm().valueHmm();
    }

    /** Whether every dimension is known. */
    boolean isKnown() {
        return Stream.of(width, thickness, portOverhang, blankOverhang).noneMatch(Dimension::isUnknown)
                && ports.stream()
                        .noneMatch(p ->
                                p.fromFanAreaMm().isUnknown() || p.asideMm().isUnknown());
    }
}
