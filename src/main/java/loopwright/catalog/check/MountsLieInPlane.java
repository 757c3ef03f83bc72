package loopwright.catalog.check;

import java.util.List;
import java.util.Locale;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.read.Problems;

/** A mount's fans follow each other along an axis of its panel's plane. */
final class MountsLieInPlane implements Check {

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Chassis> chassis : items.of(Chassis.class)) {
            List<Mount> mounts = chassis.value().mounts();
            for (int i = 0; i < mounts.size(); i++) {
                String path = "mounts[" + i + "].lengthwise";
                Axis lengthwise = mounts.get(i).lengthwise();
                PlacedSeat.findPanel(chassis.value(), mounts.get(i))
                        .filter(panel -> panel.face().normal() == lengthwise)
                        .ifPresent(panel -> problems.add(chassis.item()
                                .problem(
                                        path,
                                        word(lengthwise),
                                        "an axis in the plane of the " + word(panel.face()),
                                        "That axis is square to it.")));
            }
        }
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
