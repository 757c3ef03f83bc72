package loopwright.catalog.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.read.Problems;

/** A panel's flat and features give the two axes of its plane, and not its normal. */
final class PatchesLieInPlane implements Check {

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Chassis> chassis : items.of(Chassis.class)) {
            List<Panel> panels = chassis.value().shell().panels();
            for (int i = 0; i < panels.size(); i++) {
                Panel panel = panels.get(i);
                String path = "shell.panels[" + i + "]";
                patch(chassis, panel, path + ".flat", panel.flat(), problems);
                features(panel).forEach((name, list) -> {
                    for (int j = 0; j < list.size(); j++) {
                        patch(
                                chassis,
                                panel,
                                path + ".features." + name + "[" + j + "].at",
                                list.get(j).at(),
                                problems);
                    }
                });
            }
        }
    }

    private static Map<String, List<Panel.Feature>> features(Panel panel) {
        return Map.of(
                "slots", panel.features().slots(),
                "perforated", panel.features().perforated(),
                "folds", panel.features().folds(),
                "clips", panel.features().clips());
    }

    private static void patch(
            Items.Placed<Chassis> chassis, Panel panel, String path, Panel.Patch patch, Problems problems) {
        List<String> given = new ArrayList<>();
        List<String> wanted = new ArrayList<>();
        for (Axis axis : Axis.values()) {
            String field = axis.name().toLowerCase(Locale.ROOT) + "_mm";
            if (patch.along(axis).isPresent()) {
                given.add(field);
            }
            if (axis != panel.face().normal()) {
                wanted.add(field);
            }
        }
        if (!given.equals(wanted)) {
            problems.add(chassis.item()
                    .problem(
                            path,
                            given.isEmpty() ? "no axis" : String.join(" and ", given),
                            String.join(" and ", wanted) + " on the "
                                    + panel.face().name().toLowerCase(Locale.ROOT),
                            ""));
        }
    }
}
