package loopwright.fit;

import java.util.List;
import java.util.function.Function;
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

    /**
     * The outline of radiators of equal dimensions: each dimension may be off by as much as that of the one that is off
     * most.
     */
    static RadiatorOutline of(List<Radiator> alike) {
        List<RadiatorOutline> all = alike.stream().map(RadiatorOutline::of).toList();
        List<Radiator.Port> ports = all.get(0).ports().stream()
                .map(port -> leastSure(
                        port,
                        all.stream()
                                .flatMap(o -> o.ports().stream())
                                .filter(p -> portText(p).equals(portText(port)))
                                .toList()))
                .toList();
        return new RadiatorOutline(
                all.get(0).pattern(),
                leastSure(all, RadiatorOutline::width),
                leastSure(all, RadiatorOutline::thickness),
                leastSure(all, RadiatorOutline::portOverhang),
                leastSure(all, RadiatorOutline::blankOverhang),
                ports);
    }

    private static Radiator.Port leastSure(Radiator.Port port, List<Radiator.Port> alike) {
        return new Radiator.Port(
                port.face(), leastSure(alike, Radiator.Port::fromFanAreaMm), leastSure(alike, Radiator.Port::asideMm));
    }

    /** The one that may be off most, first of equals. */
    static <T> Dimension leastSure(List<T> things, Function<T, Dimension> dimension) {
        return things.stream()
                .map(dimension)
                .reduce((a, b) -> b.plusMinusHmm() > a.plusMinusHmm() ? b : a)
                .orElseThrow();
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
