package loopwright.catalog.check;

import java.util.List;
import loopwright.catalog.basis.Point;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Shell;
import loopwright.catalog.chassis.Standing;
import loopwright.catalog.read.Problems;
import loopwright.quantity.Hundredths;

/** A chassis that says what it stands on stands: three feet or more, not in one line, each under the case. */
final class FeetCarry implements Check {

    /** How far a foot may stand out beyond the inside, hundredths of a millimetre: sheet, trim and a spread foot. */
    private static final int BEYOND_HMM = 3000;

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Chassis> chassis : items.of(Chassis.class)) {
            if (items.asWritten().containsKey(chassis.value().id())) {
                continue; // a reading of the case moves nothing that is judged here
            }
            chassis.value().standing().ifPresent(standing -> check(chassis, standing, problems));
        }
    }

    private static void check(Items.Placed<Chassis> chassis, Standing standing, Problems problems) {
        List<Standing.Foot> feet = standing.feet();
        if (!makePlane(feet)) {
            problems.add(chassis.item()
                    .problem(
                            "standing.feet",
                            feet.size() < 3 ? feet.size() + " feet" : "feet in one line",
                            "three feet or more that are not in one line",
                            "On fewer it falls over."));
        }
        for (int i = 0; i < feet.size(); i++) {
            if (!isUnder(feet.get(i).at(), chassis.value().shell().interior())) {
                problems.add(chassis.item()
                        .problem(
                                "standing.feet[" + i + "].at",
                                text(feet.get(i).at()),
                                "a point under the case: z_mm at most 0, x_mm and y_mm at most 30 mm beyond the inside",
                                "Measure from the front lower left corner of the inside."));
            }
        }
    }

    private static boolean makePlane(List<Standing.Foot> feet) {
        for (int i = 2; i < feet.size(); i++) {
            for (int j = 1; j < i; j++) {
                Point a = feet.get(0).at();
                Point b = feet.get(j).at();
                Point c = feet.get(i).at();
                long cross = (long) (b.xMm().valueHmm() - a.xMm().valueHmm())
                                * (c.yMm().valueHmm() - a.yMm().valueHmm())
                        - (long) (b.yMm().valueHmm() - a.yMm().valueHmm())
                                * (c.xMm().valueHmm() - a.xMm().valueHmm());
                if (cross != 0) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean isUnder(Point at, Shell.Interior interior) {
        return at.zMm().valueHmm() <= 0
                && isNear(at.xMm().valueHmm(), interior.widthMm().valueHmm())
                && isNear(at.yMm().valueHmm(), interior.depthMm().valueHmm());
    }

    private static boolean isNear(int hmm, int sizeHmm) {
        return hmm >= -BEYOND_HMM && hmm <= sizeHmm + BEYOND_HMM;
    }

    private static String text(Point at) {
        return "x " + mm(at.xMm().valueHmm()) + ", y " + mm(at.yMm().valueHmm()) + ", z "
                + mm(at.zMm().valueHmm());
    }

    private static String mm(int hmm) {
        return Hundredths.toMm(hmm).stripTrailingZeros().toPlainString();
    }
}
