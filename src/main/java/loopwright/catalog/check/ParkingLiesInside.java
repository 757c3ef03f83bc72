package loopwright.catalog.check;

import java.util.List;
import java.util.Locale;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Span;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Shell;
import loopwright.catalog.chassis.Wiring;
import loopwright.catalog.read.Problems;
import loopwright.quantity.Dimension;
import loopwright.quantity.Hundredths;

/** Boxes where cable is put away lie inside the chassis. Unknown dimensions are passed over. */
final class ParkingLiesInside implements Check {

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Chassis> chassis : items.of(Chassis.class)) {
            if (items.asWritten().containsKey(chassis.value().id())) {
                continue; // a reading of the case moves nothing that is judged here
            }
            List<Wiring.Parking> parking =
                    chassis.value().wiring().map(Wiring::parking).orElse(List.of());
            for (int i = 0; i < parking.size(); i++) {
                for (Axis axis : Axis.values()) {
                    Span span = parking.get(i).box().along(axis);
                    Dimension size = size(chassis.value().shell().interior(), axis);
                    boolean beyond = !size.isUnknown() && span.to().valueHmm() > size.valueHmm();
                    if (span.from().valueHmm() < 0 || beyond) {
                        problems.add(chassis.item()
                                .problem(
                                        "wiring.parking[" + i + "].box."
                                                + axis.name().toLowerCase(Locale.ROOT) + "_mm",
                                        "[" + text(span.from()) + ", " + text(span.to()) + "]",
                                        "a box inside the chassis, 0 to " + text(size),
                                        ""));
                    }
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
