package loopwright.catalog.check;

import java.util.LinkedHashMap;
import java.util.Map;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Shell;
import loopwright.catalog.read.Problems;
import loopwright.quantity.Dimension;

/** The inside of a chassis is known: counted as zero, it would turn "not measured" into "nothing fits". */
final class InteriorIsMeasured implements Check {

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Chassis> chassis : items.of(Chassis.class)) {
            Shell.Interior interior = chassis.value().shell().interior();
            Map<String, Dimension> sides = new LinkedHashMap<>();
            sides.put("width_mm", interior.widthMm());
            sides.put("depth_mm", interior.depthMm());
            sides.put("height_mm", interior.heightMm());
            sides.forEach((name, dimension) -> {
                if (dimension.isUnknown()) {
                    problems.add(chassis.item()
                            .problem(
                                    "shell.interior." + name,
                                    "unknown",
                                    "a length",
                                    "Measure the inside first: everything else is judged against it."));
                }
            });
        }
    }
}
