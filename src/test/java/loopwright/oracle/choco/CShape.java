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
                            out.putIfAbsent(shape.sameAs(), shape);
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
        int half = fansHmm() / 2;
        int fanHalf = radiator.pattern().sizeMm() * 50;
        int port = out.mm(radiator.body().portOverhangMm());
        int blank = out.mm(radiator.body().blankOverhangMm());
        int wide = out.mm(radiator.body().widthMm()) / 2;
        int lowEnd = -half - (atHigh ? blank : port);
        int highEnd = half + (atHigh ? port : blank);
        int fanThick = out.mm(fan.frame().thicknessMm());
        int thick = out.mm(radiator.body().thicknessMm());
        int r = room.fittingRadiusMm().valueHmm();
        int reach = room.portRoomMm().valueHmm();
        int depth = mount.gasket().map(g -> out.mm(g.squeezedMm())).orElse(0);
        boolean insideNow = false;
        for (int i = 0; i < layers.length(); i++) {
            char layer = layers.charAt(i);
            if (layer == '|') {
                insideNow = true;
            } else if (layer == 'F' && insideNow) {
                frame.box(
                        -half,
                        half,
                        -fanHalf,
                        fanHalf,
                        depth,
                        depth + fanThick,
                        false,
                        room.fanNeedMm().valueHmm());
                depth += fanThick;
            } else if (layer == 'R' && insideNow) {
                frame.box(lowEnd, highEnd, -wide, wide, depth, depth + thick, false, 0);
                int middle = depth + thick / 2;
                for (Radiator.Port p : radiator.ports().at()) {
                    if (p.face() == Radiator.PortFace.END) {
                        int v = out.mm(p.asideMm());
                        int u = atHigh ? highEnd : lowEnd - reach;
                        frame.box(u, u + reach, v - r, v + r, middle - r, middle + r, true, 0);
                    }
                }
                depth += thick;
                broad(out, frame, half, depth, r, reach);
            } else if (layer == 'R') {
                broad(out, frame, half, 0, r, reach);
            }
        }
        return out;
    }

    private void broad(CBody out, CStackFrame frame, int half, int depth, int r, int reach) {
        for (Radiator.Port p : radiator.ports().at()) {
            if (p.face() == Radiator.PortFace.BROAD) {
                int c = half + out.mm(p.fromFanAreaMm());
                int u = atHigh ? c : -c;
                int v = out.mm(p.asideMm());
                frame.box(u - r, u + r, v - r, v + r, depth, depth + reach, true, 0);
            }
        }
    }

    /** Turns (u, v, depth) into chassis axes. */
    static final class CStackFrame {
        private final CBody out;
        private final Axis along;
        private final Axis across;
        private final Face face;
        private final int seat;

        CStackFrame(CBody out, Mount mount, Face face, int fullHmm) {
            this.out = out;
            this.along = mount.lengthwise();
            this.across = across(mount, face);
            this.face = face;
            int inset = out.mm(mount.insetMm());
            this.seat = face.isHigh() ? fullHmm - inset : inset;
        }

        static Axis across(Mount mount, Face face) {
            return Set.of(Axis.X, Axis.Y, Axis.Z).stream()
                    .filter(a -> a != mount.lengthwise() && a != face.normal())
                    .findAny()
                    .orElseThrow();
        }

        void box(int u0, int u1, int v0, int v1, int d0, int d1, boolean room, int need) {
            int sign = face.isHigh() ? -1 : 1;
            CBox.Ends depth = CBox.Ends.sorted(seat + sign * d0, seat + sign * d1);
            CBox.Ends u = new CBox.Ends(u0, u1);
            CBox.Ends v = new CBox.Ends(v0, v1);
            out.boxes.add(
                    CBox.of(end(Axis.X, u, v, depth), end(Axis.Y, u, v, depth), end(Axis.Z, u, v, depth), room, need));
        }

        private CBox.Ends end(Axis axis, CBox.Ends u, CBox.Ends v, CBox.Ends depth) {
            return axis == along ? u : axis == across ? v : depth;
        }
    }
}
