package loopwright.catalog.check;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import loopwright.catalog.basis.Face;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.read.ChoiceName;
import loopwright.catalog.read.Problems;

/** A chassis names each face that comes off once. */
final class FacesComeOffOnce implements Check {

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Chassis> chassis : items.of(Chassis.class)) {
            List<Face> faces = chassis.value().shell().comesOff();
            Set<Face> seen = EnumSet.noneOf(Face.class);
            for (int i = 0; i < faces.size(); i++) {
                if (!seen.add(faces.get(i))) {
                    problems.add(chassis.item()
                            .problem(
                                    "shell.comes_off[" + i + "]",
                                    ChoiceName.of(faces.get(i)) + " a second time",
                                    "each face once",
                                    ""));
                }
            }
        }
    }
}
