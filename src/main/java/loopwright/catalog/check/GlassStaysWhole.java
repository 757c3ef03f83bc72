package loopwright.catalog.check;

import java.util.List;
import loopwright.catalog.chassis.Airway;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.read.Problems;

/** Tempered glass is never cut and never drilled: it bursts. */
final class GlassStaysWhole implements Check {

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Chassis> chassis : items.of(Chassis.class)) {
            for (PlacedSeat seat : PlacedSeat.allOf(chassis)) {
                if (seat.madeNew() && seat.onSheet() && seat.panel().material() == Panel.Material.GLASS) {
                    note(chassis, seat.path(), "new holes in", seat.panel().id(), problems);
                }
            }
            List<Mod> mods = chassis.value().mods();
            for (int i = 0; i < mods.size(); i++) {
                cuts(chassis, "mods[" + i + "].effect", mods.get(i).effect(), problems);
            }
        }
    }

    private static void cuts(Items.Placed<Chassis> chassis, String path, Mod.Effect effect, Problems problems) {
        for (int i = 0; i < effect.airways().size(); i++) {
            Airway airway = effect.airways().get(i);
            if (airway.cut().isPresent()) {
                cut(chassis, path + ".airways[" + i + "].cut", airway.mount(), problems);
            }
        }
        for (int i = 0; i < effect.covers().size(); i++) {
            cut(
                    chassis,
                    path + ".covers[" + i + "].over",
                    effect.covers().get(i).mount(),
                    problems);
        }
    }

    private static void cut(Items.Placed<Chassis> chassis, String path, String mount, Problems problems) {
        PlacedSeat.findMount(chassis.value(), mount)
                .flatMap(m -> PlacedSeat.findPanel(chassis.value(), m))
                .filter(panel -> panel.material() == Panel.Material.GLASS)
                .ifPresent(panel -> note(chassis, path, "a cut in", panel.id(), problems));
    }

    private static void note(Items.Placed<Chassis> chassis, String path, String what, String panel, Problems problems) {
        problems.add(chassis.item()
                .problem(
                        path,
                        what + " panel \"" + panel + "\", which is glass",
                        "cuts and holes in metal, plastic or acrylic",
                        ""));
    }
}
