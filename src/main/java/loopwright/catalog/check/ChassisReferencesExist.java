package loopwright.catalog.check;

import java.util.List;
import java.util.Set;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.Place;
import loopwright.catalog.read.FileKind;
import loopwright.catalog.read.Item;
import loopwright.catalog.read.Problems;

/** Panels, bodies, places, mounts, mods and covers that a chassis names are there. */
final class ChassisReferencesExist implements Check {

    @Override
    public void run(Items items, Problems problems) {
        Set<String> covers = items.ids(FileKind.COVERS);
        for (Items.Placed<Chassis> placed : items.of(Chassis.class)) {
            Chassis chassis = placed.value();
            Item item = placed.item();
            bodies(chassis, item, problems);
            Reference panels = new Reference(item, ChassisIds.panels(chassis), "a panel of this chassis", problems);
            for (int i = 0; i < chassis.mounts().size(); i++) {
                panels.check("mounts[" + i + "].panel", chassis.mounts().get(i).panel());
            }
            for (int i = 0; i < chassis.mods().size(); i++) {
                mod(chassis, item, i, problems);
                if (items.whole()) {
                    covers(
                            new Reference(item, covers, "a cover", problems),
                            chassis.mods().get(i),
                            i);
                }
            }
        }
    }

    private static void bodies(Chassis chassis, Item item, Problems problems) {
        List<String> ids =
                ChassisIds.bodies(chassis).stream().map(ChassisIds.Named::id).toList();
        Reference bodies = new Reference(item, ids, "an obstruction, removable or added body", problems);
        Reference removables = removables(chassis, item, problems);
        bodies.checkAll("inside.board.touches", chassis.inside().board().touches());
        List<Place> places = chassis.inside().places();
        for (int i = 0; i < places.size(); i++) {
            String path = "inside.places[" + i + "]";
            bodies.checkAll(path + ".touches", places.get(i).touches());
            places.get(i).inside().ifPresent(id -> removables.check(path + ".inside", id));
        }
        List<Mount> mounts = chassis.mounts();
        for (int i = 0; i < mounts.size(); i++) {
            bodies.checkAll("mounts[" + i + "].touches", mounts.get(i).touches());
        }
    }

    private static Reference removables(Chassis chassis, Item item, Problems problems) {
        return new Reference(item, ChassisIds.removables(chassis), "a removable of this chassis", problems);
    }

    private static void mod(Chassis chassis, Item item, int index, Problems problems) {
        Mod mod = chassis.mods().get(index);
        String path = "mods[" + index + "]";
        Reference mods = new Reference(item, ChassisIds.mods(chassis), "a mod of this chassis", problems);
        mods.checkAll(path + ".rules.requires", mod.rules().requires());
        mods.checkAll(path + ".rules.excludes", mod.rules().excludes());
        removables(chassis, item, problems)
                .checkAll(path + ".effect.removes", mod.effect().removes());
        Reference places = new Reference(item, ChassisIds.places(chassis), "a place of this chassis", problems);
        places.checkAll(path + ".effect.opens_places", mod.effect().opensPlaces());
        places.checkAll(path + ".effect.closes_places", mod.effect().closesPlaces());
        Reference mounts = new Reference(item, ChassisIds.mounts(chassis), "a mount of this chassis", problems);
        for (int i = 0; i < mod.effect().seats().size(); i++) {
            mounts.check(
                    path + ".effect.seats[" + i + "].mount",
                    mod.effect().seats().get(i).mount());
        }
        for (int i = 0; i < mod.effect().covers().size(); i++) {
            mounts.check(
                    path + ".effect.covers[" + i + "].mount",
                    mod.effect().covers().get(i).mount());
        }
        for (int i = 0; i < mod.effect().airways().size(); i++) {
            mounts.check(
                    path + ".effect.airways[" + i + "].mount",
                    mod.effect().airways().get(i).mount());
        }
    }

    private static void covers(Reference covers, Mod mod, int index) {
        for (int i = 0; i < mod.effect().covers().size(); i++) {
            covers.check(
                    "mods[" + index + "].effect.covers[" + i + "].cover",
                    mod.effect().covers().get(i).cover());
        }
    }
}
