package loopwright.catalog.check;

import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Inside;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.chassis.Place;
import loopwright.catalog.chassis.Wiring;

/** The ids inside a chassis, by what they name. Obstructions, removables and added bodies share one name space. */
final class ChassisIds {

    /** One id and where it stands. */
    record Named(String path, String id) {}

    private ChassisIds() {}

    static List<String> mods(Chassis chassis) {
        return chassis.mods().stream().map(Mod::id).toList();
    }

    static List<String> mounts(Chassis chassis) {
        return chassis.mounts().stream().map(Mount::id).toList();
    }

    static List<String> panels(Chassis chassis) {
        return chassis.shell().panels().stream().map(Panel::id).toList();
    }

    static List<String> places(Chassis chassis) {
        return chassis.inside().places().stream().map(Place::id).toList();
    }

    static List<String> removables(Chassis chassis) {
        return chassis.inside().removables().stream().map(Inside.Removable::id).toList();
    }

    /** Obstructions, removables and bodies that mods add. */
    static List<Named> bodies(Chassis chassis) {
        List<Named> out = new ArrayList<>();
        out.addAll(named(
                "inside.obstructions",
                chassis.inside().obstructions().stream()
                        .map(Inside.Obstruction::id)
                        .toList()));
        out.addAll(named("inside.removables", removables(chassis)));
        for (int i = 0; i < chassis.mods().size(); i++) {
            List<Inside.Obstruction> adds = chassis.mods().get(i).effect().adds();
            out.addAll(named(
                    "mods[" + i + "].effect.adds",
                    adds.stream().map(Inside.Obstruction::id).toList()));
        }
        return out;
    }

    /** Holes for cables, of the case and of its mods. */
    static List<Named> holes(Chassis chassis) {
        List<Named> out = new ArrayList<>(named(
                "wiring.holes",
                chassis.wiring().map(Wiring::holes).orElse(List.of()).stream()
                        .map(Wiring.RoutingHole::id)
                        .toList()));
        for (int i = 0; i < chassis.mods().size(); i++) {
            out.addAll(named(
                    "mods[" + i + "].effect.routing_holes",
                    chassis.mods().get(i).effect().routingHoles().stream()
                            .map(Wiring.RoutingHole::id)
                            .toList()));
        }
        return out;
    }

    /** Lists of ids each of which has to be free of doubles. */
    static List<List<Named>> spaces(Chassis chassis) {
        return List.of(
                named("shell.panels", panels(chassis)),
                bodies(chassis),
                named("inside.places", places(chassis)),
                named("mounts", mounts(chassis)),
                named("mods", mods(chassis)),
                holes(chassis));
    }

    private static List<Named> named(String list, List<String> ids) {
        List<Named> out = new ArrayList<>();
        for (int i = 0; i < ids.size(); i++) {
            out.add(new Named(list + "[" + i + "].id", ids.get(i)));
        }
        return out;
    }
}
