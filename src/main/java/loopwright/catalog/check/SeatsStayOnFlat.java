package loopwright.catalog.check;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Span;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.read.Problems;
import loopwright.catalog.standard.Standards;
import loopwright.quantity.Hundredths;

/**
 * Wherever a seat lets a pattern go, its screws stay on the flat of the panel; those of a new pattern keep one sheet
 * thickness of metal to the flat's edge.
 *
 * <p>Seats in an inset bracket or in the flange of a cover over a window are not in the sheet and pass.
 */
final class SeatsStayOnFlat implements Check {

    @Override
    public void run(Items items, Problems problems) {
        items.findOnly(Standards.class).ifPresent(standards -> {
            for (Items.Placed<Chassis> chassis : items.of(Chassis.class)) {
                for (PlacedSeat seat : PlacedSeat.allOf(chassis)) {
                    ScrewHoles.of(seat.seat().pattern(), standards)
                            .filter(holes -> seat.onSheet())
                            .ifPresent(holes -> seat(chassis, seat, holes, problems));
                }
            }
        });
    }

    private static void seat(Items.Placed<Chassis> chassis, PlacedSeat seat, ScrewHoles holes, Problems problems) {
        Axis lengthwise = seat.mount().lengthwise();
        axis(
                chassis,
                seat,
                ".lengthwise_mm",
                seat.seat().lengthwiseMm(),
                holes.reachDoubled(),
                seat.flatAlong(lengthwise),
                problems);
        axis(
                chassis,
                seat,
                ".sideways_mm",
                seat.seat().sidewaysMm(),
                holes.sidewaysDoubled(),
                seat.flatAlong(PlacedSeat.sideways(seat.mount(), seat.panel())),
                problems);
    }

    private static void axis(
            Items.Placed<Chassis> chassis,
            PlacedSeat seat,
            String field,
            List<Span> spans,
            int reachDoubled,
            Optional<Span> flat,
            Problems problems) {
        int edgeDoubled = seat.madeNew() ? 2 * seat.panel().thicknessMm().valueHmm() : 0;
        int keepDoubled = reachDoubled + ScrewHoles.HOLE_DIAMETER_HMM + edgeDoubled;
        for (int i = 0; i < spans.size() && flat.isPresent(); i++) {
            int low = 2 * flat.get().from().valueHmm() + keepDoubled;
            int high = 2 * flat.get().to().valueHmm() - keepDoubled;
            Span span = spans.get(i);
            if (span.from().isUnknown() || span.to().isUnknown()) {
                continue;
            }
            if (2 * span.from().valueHmm() < low || 2 * span.to().valueHmm() > high) {
                problems.add(chassis.item()
                        .problem(
                                seat.path() + field + "[" + i + "]",
                                Hundredths.text(span.from().valueHmm()) + " to "
                                        + Hundredths.text(span.to().valueHmm()),
                                allowed(seat, low, high),
                                seat.madeNew() ? "A new hole keeps one sheet thickness to the edge of the flat." : ""));
            }
        }
    }

    private static String allowed(PlacedSeat seat, int lowDoubled, int highDoubled) {
        String panel = "of panel \"" + seat.panel().id() + "\"";
        if (lowDoubled > highDoubled) {
            return "a pattern whose screws find room on the flat " + panel;
        }
        int low = Math.floorDiv(lowDoubled + 1, 2);
        int high = Math.floorDiv(highDoubled, 2);
        return Hundredths.text(low) + " to " + Hundredths.text(high) + ", where the screws stay on the flat " + panel;
    }
}
