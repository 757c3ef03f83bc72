package loopwright.oracle.choco;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.standard.Practice;
import loopwright.oracle.LayoutText;
import loopwright.oracle.OracleCase;
import loopwright.quantity.Dimension;
import org.chocosolver.solver.variables.BoolVar;

/** What can hang on a mount: layers as letters outside in, before {@code |} in the cover, F fans, R radiator. */
record CShape(String arrangement, String layers, Radiator radiator, Fan fan, boolean atHigh) {

    private static final Map<String, String> LAYERS = new LinkedHashMap<>();

    static {
        LAYERS.put("PUSH", "|FR");
        LAYERS.put("PULL", "|RF");
        LAYERS.put("PUSH_PULL", "|FRF");
        LAYERS.put("COVER_PUSH", "F|R");
        LAYERS.put("COVER_PUSH_PULL", "F|RF");
        LAYERS.put("COVER_RADIATOR", "R|F");
    }

    static List<CShape> of(OracleCase question) {
        List<String> wantedRadiators =
                question.brief().loop().radiators().map(Choice::anyOf).orElse(List.of());
        List<String> wantedFans =
                question.brief().loop().fans().map(Choice::anyOf).orElse(List.of());
        Map<List<Object>, CShape> out = new LinkedHashMap<>();
        for (Radiator r : question.catalog().all(Radiator.class)) {
            for (Fan f : question.catalog().all(Fan.class)) {
                boolean wanted = (wantedRadiators.isEmpty() || wantedRadiators.contains(r.id()))
                        && (wantedFans.isEmpty() || wantedFans.contains(f.id()));
                if (wanted && f.frame().sizeMm() == r.pattern().sizeMm()) {
                    LAYERS.forEach((name, layers) -> {
                        for (boolean high : List.of(false, true)) {
                            CShape shape = new CShape(name, layers, r, f, high);
                            out.merge(shape.sameAs(), shape, CShape::orLessSure);
                        }
                    });
                }
            }
        }
        return new ArrayList<>(out.values());
    }

    /** What makes two shapes one: sizes as they count, what of them is known, arrangement and end. */
    private List<Object> sameAs() {
        List<Object> out = new ArrayList<>(List.of(text()));
        for (var d : List.of(
                radiator.body().widthMm(),
                radiator.body().thicknessMm(),
                radiator.body().portOverhangMm(),
                radiator.body().blankOverhangMm(),
                fan.frame().thicknessMm())) {
            out.add(d.isUnknown());
        }
        for (Radiator.Port p : radiator.ports().at()) {
            out.add(p.fromFanAreaMm().isUnknown());
            out.add(p.asideMm().isUnknown());
        }
        return out;
    }

    /** This shape, each of whose dimensions may be off by as much as the other's where that is more. */
    private CShape orLessSure(CShape other) {
        Radiator.Body a = radiator.body();
        Radiator.Body b = other.radiator.body();
        List<Radiator.Port> ports = new ArrayList<>();
        List<Radiator.Port> spare = new ArrayList<>(other.radiator.ports().at());
        for (Radiator.Port port : radiator.ports().at()) {
            Radiator.Port twin =
                    spare.stream().filter(p -> same(p, port)).findFirst().orElseThrow();
            spare.remove(twin);
            ports.add(new Radiator.Port(
                    port.face(),
                    wider(port.fromFanAreaMm(), twin.fromFanAreaMm()),
                    wider(port.asideMm(), twin.asideMm())));
        }
        Radiator both = new Radiator(
                radiator.id(),
                radiator.title(),
                radiator.variantOf(),
                radiator.buy(),
                radiator.pattern(),
                new Radiator.Body(
                        wider(a.widthMm(), b.widthMm()),
                        wider(a.thicknessMm(), b.thicknessMm()),
                        wider(a.portOverhangMm(), b.portOverhangMm()),
                        wider(a.blankOverhangMm(), b.blankOverhangMm()),
                        a.seat(),
                        a.massG()),
                new Radiator.Ports(ports, radiator.ports().metal()),
                radiator.core());
        Fan.Frame frame = fan.frame();
        Dimension thick = wider(frame.thicknessMm(), other.fan.frame().thicknessMm());
        Fan wideFan = new Fan(
                fan.id(),
                fan.title(),
                fan.variantOf(),
                fan.buy(),
                new Fan.Frame(frame.sizeMm(), thick, frame.massG()),
                fan.air(),
                fan.electric());
        return new CShape(arrangement, layers, both, wideFan, atHigh);
    }

    private static boolean same(Radiator.Port a, Radiator.Port b) {
        return a.face() == b.face()
                && a.fromFanAreaMm().valueHmm() == b.fromFanAreaMm().valueHmm()
                && a.asideMm().valueHmm() == b.asideMm().valueHmm();
    }

    private static Dimension wider(Dimension a, Dimension b) {
        return a.plusMinusHmm() >= b.plusMinusHmm() ? a : b;
    }

    boolean inCover() {
        return !layers.startsWith("|");
    }

    int fansHmm() {
        return radiator.pattern().fans() * radiator.pattern().sizeMm() * 100;
    }

    String text() {
        List<String> ports = new ArrayList<>();
        radiator.ports()
                .at()
                .forEach(p -> ports.add(LayoutText.port(
                        p.face() == Radiator.PortFace.BROAD,
                        p.fromFanAreaMm().valueHmm(),
                        p.asideMm().valueHmm())));
        Radiator.Body b = radiator.body();
        List<Integer> sizes = List.of(
                b.widthMm().valueHmm(),
                b.thicknessMm().valueHmm(),
                b.portOverhangMm().valueHmm(),
                b.blankOverhangMm().valueHmm());
        String way = arrangement + "/" + (atHigh ? "HIGH" : "LOW");
        return LayoutText.stack(
                radiator.pattern(), sizes, ports, fan.frame().thicknessMm().valueHmm(), way);
    }

    /** The body at u = 0, v = 0. */
    CBody body(List<BoolVar> when, Mount mount, Face face, int fullHmm, Practice.Room room) {
        CBody out = new CBody(when, "", false).may(List.of(face), mount.touches());
        CStackFrame frame = new CStackFrame(out, mount, face, fullHmm);
        CEdge half = CEdge.sharp(fansHmm() / 2);
        CEdge fanHalf = CEdge.sharp(radiator.pattern().sizeMm() * 50);
        CEdge port = out.edge(radiator.body().portOverhangMm());
        CEdge blank = out.edge(radiator.body().blankOverhangMm());
        out.mm(radiator.body().widthMm());
        CEdge wide = CEdge.halfOf(radiator.body().widthMm());
        CEdge lowEnd = half.and(atHigh ? blank : port).negative();
        CEdge highEnd = half.and(atHigh ? port : blank);
        CEdge fanThick = out.edge(fan.frame().thicknessMm());
        CEdge thick = out.edge(radiator.body().thicknessMm());
        CEdge r = CEdge.sharp(room.fittingRadiusMm().valueHmm());
        CEdge reach = CEdge.sharp(room.portRoomMm().valueHmm());
        CEdge depth = mount.gasket().map(g -> out.edge(g.squeezedMm())).orElse(CEdge.ORIGIN);
        boolean insideNow = false;
        for (int i = 0; i < layers.length(); i++) {
            char layer = layers.charAt(i);
            if (layer == '|') {
                insideNow = true;
            } else if (layer == 'F' && insideNow) {
                CEdge from = depth;
                depth = depth.and(fanThick);
                frame.box(
                        new CBox.Ends(half.negative(), half),
                        new CBox.Ends(fanHalf.negative(), fanHalf),
                        new CBox.Ends(from, depth),
                        false,
                        room.fanNeedMm().valueHmm());
            } else if (layer == 'R' && insideNow) {
                CEdge from = depth;
                depth = depth.and(thick);
                frame.box(
                        new CBox.Ends(lowEnd, highEnd),
                        new CBox.Ends(wide.negative(), wide),
                        new CBox.Ends(from, depth),
                        false,
                        0);
                CEdge middle = from.and(CEdge.halfOf(radiator.body().thicknessMm()));
                for (Radiator.Port p : radiator.ports().at()) {
                    if (p.face() == Radiator.PortFace.END) {
                        CEdge v = out.edge(p.asideMm());
                        CBox.Ends beyondTank = atHigh
                                ? new CBox.Ends(highEnd, highEnd.and(reach))
                                : new CBox.Ends(lowEnd.less(reach), lowEnd);
                        frame.box(
                                beyondTank,
                                new CBox.Ends(v.less(r), v.and(r)),
                                new CBox.Ends(middle.less(r), middle.and(r)),
                                true,
                                0);
                    }
                }
                broad(out, frame, half, depth, r, reach);
            } else if (layer == 'R') {
                broad(out, frame, half, CEdge.ORIGIN, r, reach);
            }
        }
        return out;
    }

    private void broad(CBody out, CStackFrame frame, CEdge half, CEdge depth, CEdge r, CEdge reach) {
        for (Radiator.Port p : radiator.ports().at()) {
            if (p.face() == Radiator.PortFace.BROAD) {
                CEdge c = half.and(out.edge(p.fromFanAreaMm()));
                CEdge u = atHigh ? c : c.negative();
                CEdge v = out.edge(p.asideMm());
                frame.box(
                        new CBox.Ends(u.less(r), u.and(r)),
                        new CBox.Ends(v.less(r), v.and(r)),
                        new CBox.Ends(depth, depth.and(reach)),
                        true,
                        0);
            }
        }
    }

    /** Turns (u, v, depth) into chassis axes. */
    static final class CStackFrame {
        private final CBody out;
        private final Axis along;
        private final Axis across;
        private final Face face;
        private final CEdge seat;

        CStackFrame(CBody out, Mount mount, Face face, int fullHmm) {
            this.out = out;
            this.along = mount.lengthwise();
            this.across = across(mount, face);
            this.face = face;
            CEdge inset = out.edge(mount.insetMm());
            this.seat = face.isHigh() ? new CEdge(fullHmm, List.of(), true).less(inset) : inset;
        }

        static Axis across(Mount mount, Face face) {
            return Set.of(Axis.X, Axis.Y, Axis.Z).stream()
                    .filter(a -> a != mount.lengthwise() && a != face.normal())
                    .findAny()
                    .orElseThrow();
        }

        void box(CBox.Ends u, CBox.Ends v, CBox.Ends d, boolean room, int need) {
            int sign = face.isHigh() ? -1 : 1;
            CBox.Ends depth = CBox.Ends.sorted(seat.and(sign, d.from()), seat.and(sign, d.to()));
            out.boxes.add(
                    CBox.of(end(Axis.X, u, v, depth), end(Axis.Y, u, v, depth), end(Axis.Z, u, v, depth), room, need));
        }

        private CBox.Ends end(Axis axis, CBox.Ends u, CBox.Ends v, CBox.Ends depth) {
            return axis == along ? u : axis == across ? v : depth;
        }
    }
}
