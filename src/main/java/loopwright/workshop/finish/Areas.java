package loopwright.workshop.finish;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Box;
import loopwright.catalog.basis.Span;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.part.Cover;

/** Areas to paint, both sides, square hundredths of a millimetre; openings are not taken off. */
final class Areas {

    private static final long SIDES = 2;

    private Areas() {}

    /** A panel's flat; where the file gives none, the interior's face. */
    static long ofPanel(Chassis chassis, Panel panel) {
        List<Long> edges = new ArrayList<>();
        for (Axis axis : Axis.values()) {
            if (axis != panel.face().normal()) {
                Optional<Span> flat = panel.flat().along(axis);
                edges.add(flat.map(Areas::length).orElseGet(() -> interior(chassis, axis)));
            }
        }
        return SIDES * edges.get(0) * edges.get(1);
    }

    private static long length(Span span) {
        return (long) span.to().valueHmm() - span.from().valueHmm();
    }

    private static long interior(Chassis chassis, Axis axis) {
        var interior = chassis.shell().interior();
        return switch (axis) {
            case X -> interior.widthMm().valueHmm();
            case Y -> interior.depthMm().valueHmm();
            case Z -> interior.heightMm().valueHmm();
        };
    }

    /** Lid and four walls. */
    static long ofCover(Cover cover) {
        long length = cover.body().lengthMm().valueHmm();
        long width = cover.body().widthMm().valueHmm();
        long height = (long) cover.body().insideHeightMm().valueHmm()
                + cover.body().skinMm().valueHmm();
        return SIDES * (length * width + 2 * (length + width) * height);
    }

    /** All faces of boxes. */
    static long ofBoxes(List<Box> boxes) {
        return boxes.stream()
                .mapToLong(b -> {
                    long x = length(b.xMm());
                    long y = length(b.yMm());
                    long z = length(b.zMm());
                    return 2 * (x * y + y * z + z * x);
                })
                .sum();
    }
}
