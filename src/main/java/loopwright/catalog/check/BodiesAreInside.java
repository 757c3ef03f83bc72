package loopwright.catalog.check;

import java.util.List;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Box;
import loopwright.catalog.basis.Span;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Inside;
import loopwright.catalog.chassis.Shell;
import loopwright.catalog.read.Problems;
import loopwright.quantity.Dimension;
import loopwright.quantity.Hundredths;

/** Obstructions and removables lie inside the chassis. Unknown dimensions are passed over. */
final class BodiesAreInside implements Check {

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Chassis> chassis : items.of(Chassis.class)) {
            Inside inside = chassis.value().inside();
            for (int i = 0; i < inside.obstructions().size(); i++) {
                boxes(
                        chassis,
                        "inside.obstructions[" + i + "]",
                        inside.obstructions().get(i).boxes(),
                        problems);
            }
            for (int i = 0; i < inside.removables().size(); i++) {
                boxes(
                        chassis,
                        "inside.removables[" + i + "]",
                        inside.removables().get(i).boxes(),
                        problems);
            }
        }
    }

    private static void boxes(Items.Placed<Chassis> chassis, String path, List<Box> boxes, Problems problems) {
        if (boxes.isEmpty()) {
            problems.add(chassis.item().problem(path + ".boxes", "no boxes", "at least one box", ""));
        }
        for (int i = 0; i < boxes.size(); i++) {
            for (Axis axis : Axis.values()) {
                Span span = boxes.get(i).along(axis);
                Dimension size = size(chassis.value().shell().interior(), axis);
                boolean known = !size.isUnknown();
                if (span.from().valueHmm() < 0 || (known && span.to().valueHmm() > size.valueHmm())) {
                    problems.add(chassis.item()
                            .problem(
                                    path + ".boxes[" + i + "]." + axis.name().toLowerCase(java.util.Locale.ROOT)
                                            + "_mm",
                                    "[" + text(span.from()) + ", " + text(span.to()) + "]",
                                    "a body inside the chassis, 0 to " + text(size),
                                    ""));
                }
            }
        }
    }

    private static Dimension size(Shell.Interior interior, Axis axis) {
        return switch (axis) {
            case X -> interior.widthMm();
            case Y -> interior.depthMm();
            case Z -> interior.heightMm();
        };
    }

    private static String text(Dimension dimension) {
        return dimension.isUnknown() ? "unknown" : Hundredths.text(dimension.valueHmm());
    }
}
