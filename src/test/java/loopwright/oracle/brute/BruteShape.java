package loopwright.oracle.brute;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import loopwright.catalog.Catalog;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.brief.LoopWish;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Radiator;
import loopwright.oracle.LayoutText;
import loopwright.quantity.Dimension;

/** A stack before it has a mount: radiator, fan, arrangement, and whether the ports are at the high end. */
record BruteShape(Radiator radiator, Fan fan, Way way, boolean portsHigh) {

    enum Way {
        PUSH,
        PULL,
        PUSH_PULL,
        COVER_PUSH,
        COVER_PUSH_PULL,
        COVER_RADIATOR,
        /** A bare row of fans; the radiator is then a stand-in of no size. */
        FANS_ONLY;

        /** The ways to hang a radiator. */
        static final List<Way> OF_RADIATORS =
                List.of(PUSH, PULL, PUSH_PULL, COVER_PUSH, COVER_PUSH_PULL, COVER_RADIATOR);

        boolean usesCover() {
            return name().startsWith("COVER");
        }
    }

    int fanAreaHmm() {
        return radiator.pattern().fans() * radiator.pattern().sizeMm() * 100;
    }

    String text() {
        Radiator.Body body = radiator.body();
        List<String> ports = new ArrayList<>();
        for (Radiator.Port port : radiator.ports().at()) {
            ports.add(LayoutText.port(
                    port.face() == Radiator.PortFace.BROAD,
                    port.fromFanAreaMm().valueHmm(),
                    port.asideMm().valueHmm()));
        }
        return LayoutText.stack(
                radiator.pattern(),
                List.of(
                        body.widthMm().valueHmm(),
                        body.thicknessMm().valueHmm(),
                        body.portOverhangMm().valueHmm(),
                        body.blankOverhangMm().valueHmm()),
                ports,
                fan.frame().thicknessMm().valueHmm(),
                way + "/" + (portsHigh ? "HIGH" : "LOW"));
    }

    /** Shapes by text; two of one text differ in what is unknown. */
    static List<BruteShape> all(Catalog catalog, LoopWish wish) {
        Map<String, List<BruteShape>> out = new TreeMap<>();
        for (Radiator radiator : candidates(catalog.all(Radiator.class), wish.radiators())) {
            for (Fan fan : candidates(catalog.all(Fan.class), wish.fans())) {
                if (fan.frame().sizeMm() != radiator.pattern().sizeMm()) {
                    continue;
                }
                for (Way way : Way.OF_RADIATORS) {
                    for (boolean high : new boolean[] {false, true}) {
                        BruteShape shape = new BruteShape(radiator, fan, way, high);
                        out.computeIfAbsent(shape.text() + shape.unknowns(), t -> new ArrayList<>())
                                .add(shape);
                    }
                }
            }
        }
        return out.values().stream().map(BruteShape::asOne).toList();
    }

    /** What stands for all shapes of one text: each dimension may be off by the most any of them has. */
    static BruteShape asOne(List<BruteShape> same) {
        BruteShape first = same.get(0);
        Radiator.Body body = first.radiator.body();
        List<Radiator.Port> ports = new ArrayList<>();
        for (int i = 0; i < first.sortedPorts().size(); i++) {
            int at = i;
            ports.add(new Radiator.Port(
                    first.sortedPorts().get(i).face(),
                    most(same, s -> s.sortedPorts().get(at).fromFanAreaMm()),
                    most(same, s -> s.sortedPorts().get(at).asideMm())));
        }
        Radiator radiator = new Radiator(
                first.radiator.id(),
                first.radiator.title(),
                first.radiator.variantOf(),
                first.radiator.buy(),
                first.radiator.pattern(),
                new Radiator.Body(
                        most(same, s -> s.radiator.body().widthMm()),
                        most(same, s -> s.radiator.body().thicknessMm()),
                        most(same, s -> s.radiator.body().portOverhangMm()),
                        most(same, s -> s.radiator.body().blankOverhangMm()),
                        body.seat(),
                        body.massG()),
                new Radiator.Ports(ports, first.radiator.ports().metal()),
                first.radiator.core());
        Fan.Frame frame = first.fan.frame();
        Fan fan = new Fan(
                first.fan.id(),
                first.fan.title(),
                first.fan.variantOf(),
                first.fan.buy(),
                new Fan.Frame(frame.sizeMm(), most(same, s -> s.fan.frame().thicknessMm()), frame.massG()),
                first.fan.air(),
                first.fan.electric());
        return new BruteShape(radiator, fan, first.way, first.portsHigh);
    }

    private List<Radiator.Port> sortedPorts() {
        return radiator.ports().at().stream()
                .sorted(Comparator.comparing((Radiator.Port p) -> p.face() + ":"
                        + p.fromFanAreaMm().valueHmm() + ":" + p.asideMm().valueHmm()))
                .toList();
    }

    private static Dimension most(List<BruteShape> same, Function<BruteShape, Dimension> dimension) {
        Dimension out = dimension.apply(same.get(0));
        for (BruteShape shape : same) {
            Dimension other = dimension.apply(shape);
            out = other.plusMinusHmm() > out.plusMinusHmm() ? other : out;
        }
        return out;
    }

    private String unknowns() {
        List<Dimension> all = new ArrayList<>(List.of(
                radiator.body().widthMm(),
                radiator.body().thicknessMm(),
                radiator.body().portOverhangMm(),
                radiator.body().blankOverhangMm(),
                fan.frame().thicknessMm()));
        radiator.ports().at().forEach(p -> {
            all.add(p.fromFanAreaMm());
            all.add(p.asideMm());
        });
        StringBuilder text = new StringBuilder();
        all.forEach(d -> text.append(d.isUnknown() ? '?' : '.'));
        return text.toString();
    }

    static <P extends Part> List<P> candidates(List<P> all, java.util.Optional<Choice> choice) {
        if (choice.isEmpty() || choice.get().anyOf().isEmpty()) {
            return all;
        }
        return all.stream().filter(p -> choice.get().anyOf().contains(p.id())).toList();
    }
}
