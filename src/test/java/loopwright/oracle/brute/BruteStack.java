package loopwright.oracle.brute;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.standard.Practice;

/** The boxes of a shape on a mount, with the pattern's centre at u = 0, v = 0. */
final class BruteStack {
    private final Practice.Room room;
    private final Face face;
    private final Mount mount;
    private final BruteShape shape;
    private final int wallHmm;
    private final int needLessHmm;
    private final Ruler ruler = new Ruler();
    private final List<BruteBox> boxes = new ArrayList<>();

    BruteStack(Practice.Room room, Face face, Mount mount, BruteShape shape, int[] insideHmm, int needLessHmm) {
        this.room = room;
        this.face = face;
        this.mount = mount;
        this.shape = shape;
        this.needLessHmm = needLessHmm;
        this.wallHmm = face.isHigh() ? insideHmm[Xyz.of(face.normal())] : 0;
    }

    static Axis sideways(Face face, Mount mount) {
        for (Axis axis : Axis.values()) {
            if (axis != face.normal() && axis != mount.lengthwise()) {
                return axis;
            }
        }
        throw new IllegalArgumentException("mount " + mount.id() + " runs along its panel's normal");
    }

    BruteBody body() {
        int half = shape.fanAreaHmm() / 2;
        int halfFan = shape.radiator().pattern().sizeMm() * 50;
        int fanHmm = ruler.hmm(shape.fan().frame().thicknessMm());
        int radHmm = ruler.hmm(shape.radiator().body().thicknessMm());
        int gasket = mount.gasket().isPresent()
                ? ruler.hmm(mount.gasket().orElseThrow().squeezedMm())
                : 0;
        int need = room.fanNeedMm().valueHmm() - needLessHmm;
        int d = gasket;
        switch (shape.way()) {
            case PUSH -> {
                box(-half, half, -halfFan, halfFan, d, d + fanHmm, false, need);
                radiator(d + fanHmm, radHmm);
            }
            case PULL -> {
                radiator(d, radHmm);
                box(-half, half, -halfFan, halfFan, d + radHmm, d + radHmm + fanHmm, false, need);
            }
            case PUSH_PULL -> {
                box(-half, half, -halfFan, halfFan, d, d + fanHmm, false, need);
                radiator(d + fanHmm, radHmm);
                d += fanHmm + radHmm;
                box(-half, half, -halfFan, halfFan, d, d + fanHmm, false, need);
            }
            case FANS_ONLY -> box(-half, half, -halfFan, halfFan, d, d + fanHmm, false, need);
            case COVER_PUSH -> radiator(d, radHmm);
            case COVER_PUSH_PULL -> {
                radiator(d, radHmm);
                box(-half, half, -halfFan, halfFan, d + radHmm, d + radHmm + fanHmm, false, need);
            }
            case COVER_RADIATOR -> {
                box(-half, half, -halfFan, halfFan, d, d + fanHmm, false, need);
                for (Radiator.Port port : shape.radiator().ports().at()) {
                    if (port.face() == Radiator.PortFace.BROAD) {
                        broadPort(port, 0);
                    }
                }
            }
        }
        ruler.hmm(shape.radiator().body().widthMm());
        ruler.hmm(shape.radiator().body().portOverhangMm());
        ruler.hmm(shape.radiator().body().blankOverhangMm());
        ruler.hmm(mount.insetMm());
        return new BruteBody(
                BruteBody.Sort.STACK,
                "",
                ruler.sawUnknown(),
                List.copyOf(boxes),
                Set.of(face),
                Set.copyOf(mount.touches()));
    }

    private void radiator(int fromDepth, int thickness) {
        Radiator.Body body = shape.radiator().body();
        int half = shape.fanAreaHmm() / 2;
        int port = ruler.hmm(body.portOverhangMm());
        int blank = ruler.hmm(body.blankOverhangMm());
        int halfWidth = ruler.hmm(body.widthMm()) / 2;
        int lowEnd = -half - (shape.portsHigh() ? blank : port);
        int highEnd = half + (shape.portsHigh() ? port : blank);
        box(lowEnd, highEnd, -halfWidth, halfWidth, fromDepth, fromDepth + thickness, false, 0);
        int r = room.fittingRadiusMm().valueHmm();
        int away = room.portRoomMm().valueHmm();
        for (Radiator.Port at : shape.radiator().ports().at()) {
            if (at.face() == Radiator.PortFace.BROAD) {
                broadPort(at, fromDepth + thickness);
            } else {
                int aside = ruler.hmm(at.asideMm());
                int mid = fromDepth + Math.floorDiv(thickness, 2);
                int from = shape.portsHigh() ? highEnd : lowEnd - away;
                box(from, from + away, aside - r, aside + r, mid - r, mid + r, true, 0);
            }
        }
    }

    private void broadPort(Radiator.Port port, int fromDepth) {
        int c = shape.fanAreaHmm() / 2 + ruler.hmm(port.fromFanAreaMm());
        int u = shape.portsHigh() ? c : -c;
        int v = ruler.hmm(port.asideMm());
        int r = room.fittingRadiusMm().valueHmm();
        box(u - r, u + r, v - r, v + r, fromDepth, fromDepth + room.portRoomMm().valueHmm(), true, 0);
    }

    private void box(int u0, int u1, int v0, int v1, int d0, int d1, boolean keepOut, int need) {
        int[] low = new int[3];
        int[] high = new int[3];
        int u = Xyz.of(mount.lengthwise());
        int v = Xyz.of(sideways(face, mount));
        int n = Xyz.of(face.normal());
        int seat = ruler.hmm(mount.insetMm());
        low[u] = u0;
        high[u] = u1;
        low[v] = v0;
        high[v] = v1;
        low[n] = face.isHigh() ? wallHmm - seat - d1 : seat + d0;
        high[n] = face.isHigh() ? wallHmm - seat - d0 : seat + d1;
        boxes.add(new BruteBox(low, high, keepOut, need));
    }
}
