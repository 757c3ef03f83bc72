package loopwright.catalog.check;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Box;
import loopwright.catalog.basis.Span;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Inside;
import loopwright.catalog.chassis.Shell;
import loopwright.catalog.read.Problems;
import loopwright.quantity.Dimension;
import loopwright.quantity.Hundredths;

/**
 * Obstructions and removables lie inside the chassis. Unknown dimensions are passed over.
 *
 * <p>What is built in is taken as it is: where a wall was read or assumed to be nearer than the file has it, a body that
 * reaches to where the wall was is still inside.
 */
final class BodiesAreInside implements Check {

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Chassis> chassis : items.of(Chassis.class)) {
            Inside inside = chassis.value().inside();
            Optional<Shell.Interior> written = Optional.ofNullable(
                            items.asWritten().get(chassis.value().id()))
                    .map(c -> c.shell().interior());
            for (int i = 0; i < inside.obstructions().size(); i++) {
                boxes(
                        chassis,
                        "inside.obstructions[" + i + "]",
                        inside.obstructions().get(i).boxes(),
                        new Told(written, problems));
            }
            for (int i = 0; i < inside.removables().size(); i++) {
                boxes(
                        chassis,
                        "inside.removables[" + i + "]",
                        inside.removables().get(i).boxes(),
                        new Told(written, problems));
            }
        }
    }

    /** The inside as the file has it, where it was replaced, and where problems go. */
    private record Told(Optional<Shell.Interior> written, Problems problems) {

        Dimension size(Shell.Interior now, Axis axis) {
            Dimension is = BodiesAreInside.size(now, axis);
            return written.map(w -> BodiesAreInside.size(w, axis))
                    .filter(was -> was.valueHmm() > is.valueHmm())
                    .orElse(is);
        }
    }

    private static void boxes(Items.Placed<Chassis> chassis, String path, List<Box> boxes, Told told) {
        if (boxes.isEmpty()) {
            told.problems().add(chassis.item().problem(path + ".boxes", "no boxes", "at least one box", ""));
        }
        for (int i = 0; i < boxes.size(); i++) {
            for (Axis axis : Axis.values()) {
                Span span = boxes.get(i).along(axis);
                Dimension size = told.size(chassis.value().shell().interior(), axis);
                boolean known = !size.isUnknown();
                if (span.from().valueHmm() < 0 || (known && span.to().valueHmm() > size.valueHmm())) {
                    told.problems()
                            .add(chassis.item()
                                    .problem(
                                            path + ".boxes[" + i + "]."
                                                    + axis.name().toLowerCase(java.util.Locale.ROOT) + "_mm",
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
