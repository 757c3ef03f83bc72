package loopwright.catalog.check;

import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.read.Problems;

/** A mod and everything it needs, at any remove, can go together; else it could never be done. */
final class PrerequisitesAreAllowed implements Check {

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Chassis> chassis : items.of(Chassis.class)) {
            List<String> ids = ChassisIds.mods(chassis.value());
            for (int i = 0; i < ids.size() && ids.size() <= Prerequisites.MODS_MAX; i++) {
                mod(chassis, i, ids.get(i), problems);
            }
        }
    }

    private static void mod(Items.Placed<Chassis> chassis, int index, String id, Problems problems) {
        if (chassis.value().mods().get(index).rules().excludes().contains(id)) {
            problems.add(chassis.item()
                    .problem(
                            "mods[" + index + "].rules.excludes",
                            "\"" + id + "\" itself",
                            "other mods",
                            "As it stands the mod could never be done."));
        }
        List<String> together = new ArrayList<>();
        together.add(id);
        together.addAll(Prerequisites.all(chassis.value(), id));
        for (int a = 0; a < together.size(); a++) {
            for (int b = a + 1; b < together.size(); b++) {
                String one = together.get(a);
                String other = together.get(b);
                if (!one.equals(other) && Prerequisites.exclude(chassis.value(), one, other)) {
                    String found = a == 0
                            ? "\"" + other + "\" both needed and excluded"
                            : "\"" + one + "\" and \"" + other + "\" both needed, though they exclude each other";
                    problems.add(chassis.item()
                            .problem("mods[" + index + "].rules", found, "a mod that can go with what it needs", ""));
                }
            }
        }
    }
}
