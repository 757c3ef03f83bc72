package loopwright.catalog.check;

import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Box;
import loopwright.catalog.basis.Point;
import loopwright.catalog.basis.Span;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Inside;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Wiring.RoutingHole;
import loopwright.catalog.read.Problems;
import loopwright.quantity.Hundredths;

/**
 * A hole for cables lies in the plane of a sheet: of a thin box of an obstruction, a removable or what a mod adds, with
 * metal all round it. Unknown dimensions are passed over.
 */
final class HolesLieInSheets implements Check {

    /** Thicker is no sheet; common practice, no source. */
    private static final int THICKEST_HMM = 500;

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Chassis> chassis : items.of(Chassis.class)) {
            if (items.asWritten().containsKey(chassis.value().id())) {
                continue; // a reading of the case moves nothing that is judged here
            }
            List<Box> boxes = boxes(chassis.value());
            List<RoutingHole> holes =
                    chassis.value().wiring().map(w -> w.holes()).orElse(List.of());
            for (int i = 0; i < holes.size(); i++) {
                check(chassis, "wiring.holes[" + i + "]", holes.get(i), boxes, problems);
            }
            List<Mod> mods = chassis.value().mods();
            for (int m = 0; m < mods.size(); m++) {
                List<RoutingHole> cut = mods.get(m).effect().routingHoles();
                for (int i = 0; i < cut.size(); i++) {
                    check(chassis, "mods[" + m + "].effect.routing_holes[" + i + "]", cut.get(i), boxes, problems);
                }
            }
        }
    }

    private static List<Box> boxes(Chassis chassis) {
        List<Box> out = new ArrayList<>();
        chassis.inside().obstructions().forEach(o -> out.addAll(o.boxes()));
        chassis.inside().removables().forEach(r -> out.addAll(r.boxes()));
        for (Mod mod : chassis.mods()) {
            for (Inside.Obstruction added : mod.effect().adds()) {
                out.addAll(added.boxes());
            }
        }
        return out;
    }

    private static void check(
            Items.Placed<Chassis> chassis, String path, RoutingHole hole, List<Box> boxes, Problems problems) {
        if (hole.longMm().valueHmm() < hole.shortMm().valueHmm()) {
            problems.add(chassis.item()
                    .problem(
                            path + ".long_mm",
                            mm(hole.longMm().valueHmm()),
                            "at least its short_mm, " + mm(hole.shortMm().valueHmm()),
                            ""));
        }
        boolean known = !(hole.at().xMm().isUnknown()
                || hole.at().yMm().isUnknown()
                || hole.at().zMm().isUnknown());
        if (known && boxes.stream().noneMatch(b -> holds(b, hole))) {
            problems.add(chassis.item()
                    .problem(
                            path + ".at",
                            "(" + mm(hole.at().xMm().valueHmm()) + ", "
                                    + mm(hole.at().yMm().valueHmm()) + ", "
                                    + mm(hole.at().zMm().valueHmm()) + ")",
                            "a point in a sheet at most " + mm(THICKEST_HMM)
                                    + " mm thick, with the whole hole inside that sheet",
                            "Sheets are the boxes of obstructions, removables and added bodies."));
        }
    }

    private static boolean holds(Box box, RoutingHole hole) {
        for (Axis through : Axis.values()) {
            Span thickness = box.along(through);
            boolean thin = thickness.to().valueHmm() - thickness.from().valueHmm() <= THICKEST_HMM;
            if (thin && within(box, through, hole.at(), 0) && aroundHolds(box, through, hole)) {
                return true;
            }
        }
        return false;
    }

    /** Its long side may lie either way in the sheet. */
    private static boolean aroundHolds(Box box, Axis through, RoutingHole hole) {
        int longHalf = hole.longMm().valueHmm() / 2;
        int shortHalf = hole.shortMm().valueHmm() / 2;
        List<Axis> sides =
                List.of(Axis.values()).stream().filter(a -> a != through).toList();
        return within(box, sides, hole.at(), longHalf, shortHalf) || within(box, sides, hole.at(), shortHalf, longHalf);
    }

    private static boolean within(Box box, List<Axis> sides, Point at, int firstHalf, int secondHalf) {
        return within(box, sides.get(0), at, firstHalf) && within(box, sides.get(1), at, secondHalf);
    }

    private static boolean within(Box box, Axis axis, Point at, int half) {
        int middle = at.along(axis).valueHmm();
        return middle - half >= box.along(axis).from().valueHmm()
                && middle + half <= box.along(axis).to().valueHmm();
    }

    private static String mm(int hmm) {
        return Hundredths.text(hmm);
    }
}
