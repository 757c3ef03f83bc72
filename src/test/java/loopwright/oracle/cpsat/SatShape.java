package loopwright.oracle.cpsat;

import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import loopwright.catalog.Catalog;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.brief.LoopWish;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.standard.Practice;
import loopwright.oracle.LayoutText;
import loopwright.quantity.Dimension;

/** A shape by numbers; {@code kind} is its arrangement's name. */
record SatShape(Radiator radiator, Fan fan, String kind, String end) {

    static SortedMap<String, List<SatShape>> byText(Catalog catalog, LoopWish wish) {
        SortedMap<String, List<SatShape>> out = new TreeMap<>();
        for (Radiator r : wanted(
                catalog.all(Radiator.class), wish.radiators().map(Choice::anyOf).orElse(List.of()))) {
            for (Fan f : wanted(
                    catalog.all(Fan.class), wish.fans().map(Choice::anyOf).orElse(List.of()))) {
                if (r.pattern().sizeMm() == f.frame().sizeMm()) {
                    for (String kind :
                            List.of("PUSH", "PULL", "PUSH_PULL", "COVER_PUSH", "COVER_PUSH_PULL", "COVER_RADIATOR")) {
                        for (String end : List.of("LOW", "HIGH")) {
                            SatShape s = new SatShape(r, f, kind, end);
                            out.computeIfAbsent(s.text(), t -> new ArrayList<>())
                                    .add(s);
                        }
                    }
                }
            }
        }
        return out;
    }

    private static <P extends loopwright.catalog.part.Part> List<P> wanted(List<P> all, List<String> ids) {
        return all.stream().filter(p -> ids.isEmpty() || ids.contains(p.id())).toList();
    }

    String text() {
        List<String> ports = radiator.ports().at().stream()
                .map(p -> LayoutText.port(
                        p.face() == Radiator.PortFace.BROAD,
                        p.fromFanAreaMm().valueHmm(),
                        p.asideMm().valueHmm()))
                .toList();
        List<Integer> sizes = List.of(
                radiator.body().widthMm().valueHmm(),
                radiator.body().thicknessMm().valueHmm(),
                radiator.body().portOverhangMm().valueHmm(),
                radiator.body().blankOverhangMm().valueHmm());
        return LayoutText.stack(
                radiator.pattern(), sizes, ports, fan.frame().thicknessMm().valueHmm(), kind + "/" + end);
    }

    boolean covered() {
        return kind.startsWith("COVER");
    }

    int fanAreaHmm() {
        return radiator.pattern().fans() * radiator.pattern().sizeMm() * 100;
    }

    int overhangHmm(String which) {
        return overhang(which).valueHmm();
    }

    private Dimension overhang(String which) {
        return which.equals(end)
                ? radiator.body().portOverhangMm()
                : radiator.body().blankOverhangMm();
    }

    /** The largest ± among shapes of one text. */
    private static int most(List<SatShape> same, Function<SatShape, Dimension> dimension) {
        return same.stream()
                .map(dimension)
                .mapToInt(Dimension::plusMinusHmm)
                .max()
                .orElseThrow();
    }

    private static int mostOfPorts(
            List<SatShape> same, Radiator.Port like, Function<Radiator.Port, Dimension> dimension) {
        return same.stream()
                .flatMap(s -> s.radiator.ports().at().stream())
                .filter(p -> p.face() == like.face()
                        && p.fromFanAreaMm().valueHmm() == like.fromFanAreaMm().valueHmm()
                        && p.asideMm().valueHmm() == like.asideMm().valueHmm())
                .map(dimension)
                .mapToInt(Dimension::plusMinusHmm)
                .max()
                .orElseThrow();
    }

    SatBody body(List<SatShape> same, Literal on, Mount mount, Face face, int wallHmm, Practice.Room room) {
        SatBody out = new SatBody(List.of(on), "", SatParts.free(List.of(face), mount.touches()));
        Radiator.Body rad = radiator.body();
        List.of(rad.widthMm(), rad.thicknessMm(), rad.portOverhangMm(), rad.blankOverhangMm(), mount.insetMm())
                .forEach(out::read);
        int fanThick = out.read(fan.frame().thicknessMm());
        int radThick = rad.thicknessMm().valueHmm();
        int gasket = mount.gasket().isPresent() ? out.read(mount.gasket().get().squeezedMm()) : 0;
        boolean outerFans = kind.equals("PUSH") || kind.equals("PUSH_PULL") || kind.equals("COVER_RADIATOR");
        boolean innerFans = kind.equals("PULL") || kind.endsWith("PUSH_PULL");
        boolean radInside = !kind.equals("COVER_RADIATOR");
        int radFrom = gasket + (outerFans ? fanThick : 0);
        int radTo = radFrom + (radInside ? radThick : 0);
        int half = fanAreaHmm() / 2;
        int side = radiator.pattern().sizeMm() * 50;
        Turn turn = new Turn(out, mount, face, wallHmm);
        int need = room.fanNeedMm().valueHmm();
        int offFan = 2 * most(same, s -> s.fan.frame().thicknessMm());
        int offRad = 2 * most(same, s -> s.radiator.body().thicknessMm());
        int offSeat = mount.gasket().map(g -> 2 * g.squeezedMm().plusMinusHmm()).orElse(0);
        int offFrom = offSeat + (outerFans ? offFan : 0);
        int offTo = offFrom + (radInside ? offRad : 0);
        if (outerFans) {
            List<Integer> six = List.of(-half, half, -side, side, gasket, gasket + fanThick);
            turn.box(six, List.of(0, 0, 0, 0, offSeat, offSeat + offFan), false, need);
        }
        if (innerFans) {
            List<Integer> six = List.of(-half, half, -side, side, radTo, radTo + fanThick);
            turn.box(six, List.of(0, 0, 0, 0, offTo, offTo + offFan), false, need);
        }
        int low = -half - overhangHmm("LOW");
        int high = half + overhangHmm("HIGH");
        int offLow = 2 * most(same, s -> s.overhang("LOW"));
        int offHigh = 2 * most(same, s -> s.overhang("HIGH"));
        if (radInside) {
            int wide = rad.widthMm().valueHmm() / 2;
            int offWide = most(same, s -> s.radiator.body().widthMm());
            List<Integer> six = List.of(low, high, -wide, wide, radFrom, radTo);
            turn.box(six, List.of(offLow, offHigh, offWide, offWide, offFrom, offTo), false, 0);
        }
        int r = room.fittingRadiusMm().valueHmm();
        int away = room.portRoomMm().valueHmm();
        int sign = end.equals("HIGH") ? 1 : -1;
        for (Radiator.Port p : radiator.ports().at()) {
            boolean broad = p.face() == Radiator.PortFace.BROAD;
            if (!broad && !radInside) {
                continue;
            }
            int v = out.read(p.asideMm());
            int offV = 2 * mostOfPorts(same, p, Radiator.Port::asideMm);
            if (broad) {
                int u = sign * (half + out.read(p.fromFanAreaMm()));
                int offU = 2 * mostOfPorts(same, p, Radiator.Port::fromFanAreaMm);
                int d = radInside ? radTo : 0;
                int offD = radInside ? offTo : 0;
                List<Integer> six = List.of(u - r, u + r, v - r, v + r, d, d + away);
                turn.box(six, List.of(offU, offU, offV, offV, offD, offD), true, 0);
            } else {
                int mid = radFrom + radThick / 2;
                int offMid = offFrom + offRad / 2;
                int u0 = sign > 0 ? high : low - away;
                int offU = sign > 0 ? offHigh : offLow;
                List<Integer> six = List.of(u0, u0 + away, v - r, v + r, mid - r, mid + r);
                turn.box(six, List.of(offU, offU, offV, offV, offMid, offMid), true, 0);
            }
        }
        return out;
    }

    static int axis(Axis axis) {
        return axis.compareTo(Axis.X);
    }

    static int sideways(Mount mount, Face face) {
        return 3 - axis(mount.lengthwise()) - axis(face.normal());
    }

    /** From along, across and depth to x, y, z. */
    private record Turn(SatBody out, Mount mount, Face face, int wallHmm) {
        void box(List<Integer> six, List<Integer> doubts, boolean room, int need) {
            Integer[] lowDoubt = new Integer[3];
            Integer[] highDoubt = new Integer[3];
            Integer[] low = new Integer[3];
            Integer[] high = new Integer[3];
            int u = axis(mount.lengthwise());
            int v = sideways(mount, face);
            int n = axis(face.normal());
            int inset = mount.insetMm().valueHmm();
            low[u] = six.get(0);
            high[u] = six.get(1);
            low[v] = six.get(2);
            high[v] = six.get(3);
            low[n] = face.isHigh() ? wallHmm - inset - six.get(5) : inset + six.get(4);
            high[n] = face.isHigh() ? wallHmm - inset - six.get(4) : inset + six.get(5);
            int offInset = 2 * mount.insetMm().plusMinusHmm();
            lowDoubt[u] = doubts.get(0);
            highDoubt[u] = doubts.get(1);
            lowDoubt[v] = doubts.get(2);
            highDoubt[v] = doubts.get(3);
            lowDoubt[n] = offInset + doubts.get(face.isHigh() ? 5 : 4);
            highDoubt[n] = offInset + doubts.get(face.isHigh() ? 4 : 5);
            Doubt doubt = new Doubt(List.of(lowDoubt), List.of(highDoubt), face.isHigh() ? n : -1);
            out.boxes.add(new SatBody.SatBox(List.of(low), List.of(high), doubt, room, need));
        }
    }
}
