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
        Len fanLen = ruler.len(shape.fan().frame().thicknessMm());
        Len radLen = ruler.len(shape.radiator().body().thicknessMm());
        Len d = mount.gasket().isPresent()
                ? ruler.len(mount.gasket().orElseThrow().squeezedMm())
                : Len.exact(0);
        switch (shape.way()) {
            case PUSH -> {
                fans(d, fanLen);
                radiator(d.plus(fanLen), radLen);
            }
            case PULL -> {
                radiator(d, radLen);
                fans(d.plus(radLen), fanLen);
            }
            case PUSH_PULL -> {
                fans(d, fanLen);
                radiator(d.plus(fanLen), radLen);
                fans(d.plus(fanLen).plus(radLen), fanLen);
            }
            case FANS_ONLY -> fans(d, fanLen);
            case COVER_PUSH -> radiator(d, radLen);
            case COVER_PUSH_PULL -> {
                radiator(d, radLen);
                fans(d.plus(radLen), fanLen);
            }
            case COVER_RADIATOR -> {
                fans(d, fanLen);
                for (Radiator.Port port : shape.radiator().ports().at()) {
                    if (port.face() == Radiator.PortFace.BROAD) {
                        broadPort(port, Len.exact(0));
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

    private void fans(Len from, Len thickness) {
        Len half = Len.exact(shape.fanAreaHmm() / 2);
        Len halfFan = Len.exact(shape.radiator().pattern().sizeMm() * 50);
        int need = room.fanNeedMm().valueHmm() - needLessHmm;
        box(List.of(half.turned(), half, halfFan.turned(), halfFan, from, from.plus(thickness)), false, need);
    }

    private void radiator(Len fromDepth, Len thickness) {
        Radiator.Body body = shape.radiator().body();
        Len half = Len.exact(shape.fanAreaHmm() / 2);
        Len port = ruler.len(body.portOverhangMm());
        Len blank = ruler.len(body.blankOverhangMm());
        Len halfWidth = ruler.len(body.widthMm()).half();
        Len lowEnd = half.plus(shape.portsHigh() ? blank : port).turned();
        Len highEnd = half.plus(shape.portsHigh() ? port : blank);
        Len toDepth = fromDepth.plus(thickness);
        box(List.of(lowEnd, highEnd, halfWidth.turned(), halfWidth, fromDepth, toDepth), false, 0);
        Len r = Len.exact(room.fittingRadiusMm().valueHmm());
        Len away = Len.exact(room.portRoomMm().valueHmm());
        for (Radiator.Port at : shape.radiator().ports().at()) {
            if (at.face() == Radiator.PortFace.BROAD) {
                broadPort(at, toDepth);
            } else {
                Len aside = ruler.len(at.asideMm());
                Len mid = fromDepth.plus(thickness.half());
                Len from = shape.portsHigh() ? highEnd : lowEnd.minus(away);
                Len to = shape.portsHigh() ? highEnd.plus(away) : lowEnd;
                box(List.of(from, to, aside.minus(r), aside.plus(r), mid.minus(r), mid.plus(r)), true, 0);
            }
        }
    }

    private void broadPort(Radiator.Port port, Len fromDepth) {
        Len c = Len.exact(shape.fanAreaHmm() / 2).plus(ruler.len(port.fromFanAreaMm()));
        Len u = shape.portsHigh() ? c : c.turned();
        Len v = ruler.len(port.asideMm());
        Len r = Len.exact(room.fittingRadiusMm().valueHmm());
        Len to = fromDepth.plus(Len.exact(room.portRoomMm().valueHmm()));
        box(List.of(u.minus(r), u.plus(r), v.minus(r), v.plus(r), fromDepth, to), true, 0);
    }

    /** A box from and to along, across, and inwards. */
    private void box(List<Len> six, boolean keepOut, int need) {
        Len[] from = new Len[3];
        Len[] to = new Len[3];
        int u = Xyz.of(mount.lengthwise());
        int v = Xyz.of(sideways(face, mount));
        int n = Xyz.of(face.normal());
        Len seat = ruler.len(mount.insetMm());
        Len wall = Len.exact(wallHmm);
        from[u] = six.get(0);
        to[u] = six.get(1);
        from[v] = six.get(2);
        to[v] = six.get(3);
        from[n] = face.isHigh() ? wall.minus(seat).minus(six.get(5)) : seat.plus(six.get(4));
        to[n] = face.isHigh() ? wall.minus(seat).minus(six.get(4)) : seat.plus(six.get(5));
        boxes.add(BruteBox.of(from, to, face.isHigh() ? n : BruteBox.NOWHERE, keepOut, need));
    }
}
