package loopwright.catalog.check;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Span;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.read.Problems;
import loopwright.catalog.standard.Standards;

/**
 * A hole that a mod makes does not lie half in an old slot: no screw head holds there.
 *
 * <p>On the safe side: a hole is taken for the square round it, and all positions of a seat's rectangle for possible; so
 * a seat may be refused of which only some positions meet the slot. Then split its range. A hole that stays inside the slot at
 * every position passes. Seats in an inset bracket or in the flange of a cover over a window pass.
 */
final class NewHolesMissSlots implements Check {

    @Override
    public void run(Items items, Problems problems) {
        items.findOnly(Standards.class).ifPresent(standards -> {
            for (Items.Placed<Chassis> chassis : items.of(Chassis.class)) {
                for (PlacedSeat seat : PlacedSeat.allOf(chassis)) {
                    ScrewHoles.of(seat.seat().pattern(), standards)
                            .filter(holes -> seat.madeNew() && seat.onSheet())
                            .flatMap(holes -> firstHit(seat, holes))
                            .ifPresent(slot -> problems.add(chassis.item()
                                    .problem(
                                            seat.path(),
                                            "a screw hole that can lie half in slot \"" + slot.id() + "\"",
                                            "holes in sound metal at every position",
                                            "Narrow or split the range.")));
                }
            }
        });
    }

    private static Optional<Panel.Feature> firstHit(PlacedSeat seat, ScrewHoles holes) {
        return seat.panel().features().slots().stream()
                .filter(slot -> hits(seat, holes, slot))
                .findFirst();
    }

    private static boolean hits(PlacedSeat seat, ScrewHoles holes, Panel.Feature slot) {
        Optional<Span> along = slot.at().along(seat.mount().lengthwise());
        Optional<Span> across = slot.at().along(PlacedSeat.sideways(seat.mount(), seat.panel()));
        if (along.isEmpty() || across.isEmpty()) {
            return false;
        }
        for (int u : holes.lengthwiseDoubled()) {
            for (int v : List.of(-holes.sidewaysDoubled(), holes.sidewaysDoubled())) {
                for (Span range : seat.seat().lengthwiseMm()) {
                    for (Span side : seat.seat().sidewaysMm()) {
                        boolean meets = meets(range, u, along.get()) && meets(side, v, across.get());
                        boolean within = within(range, u, along.get()) && within(side, v, across.get());
                        if (meets && !within) {
                            return true;
                        }
                    }
                }
            }
        }
        return false;
    }

    private static boolean meets(Span range, int offset, Span slot) {
        return low(range, offset) < 2 * slot.to().valueHmm()
                && high(range, offset) > 2 * slot.from().valueHmm();
    }

    private static boolean within(Span range, int offset, Span slot) {
        return low(range, offset) >= 2 * slot.from().valueHmm()
                && high(range, offset) <= 2 * slot.to().valueHmm();
    }

    private static int low(Span range, int offset) {
        return 2 * range.from().valueHmm() + offset - ScrewHoles.HOLE_DIAMETER_HMM;
    }

    private static int high(Span range, int offset) {
        return 2 * range.to().valueHmm() + offset + ScrewHoles.HOLE_DIAMETER_HMM;
    }
}
