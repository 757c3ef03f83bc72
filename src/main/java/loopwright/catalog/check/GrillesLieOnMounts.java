package loopwright.catalog.check;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import loopwright.catalog.chassis.Airway;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.part.Grille;
import loopwright.catalog.read.FileKind;
import loopwright.catalog.read.Problems;

/** A grille that an airway names is there, is made for fans that hang there, and is as open as the airway says. */
final class GrillesLieOnMounts implements Check {

    @Override
    public void run(Items items, Problems problems) {
        if (!items.whole()) {
            return; // a grille may be in a file that could not be read
        }
        Set<String> ids = items.ids(FileKind.GRILLES);
        List<Grille> grilles =
                items.of(Grille.class).stream().map(Items.Placed::value).toList();
        for (Items.Placed<Chassis> chassis : items.of(Chassis.class)) {
            for (int m = 0; m < chassis.value().mods().size(); m++) {
                List<Airway> airways = chassis.value().mods().get(m).effect().airways();
                for (int i = 0; i < airways.size(); i++) {
                    String path = "mods[" + m + "].effect.airways[" + i + "]";
                    airway(chassis, path, airways.get(i), ids, grilles, problems);
                }
            }
        }
    }

    private static void airway(
            Items.Placed<Chassis> chassis,
            String path,
            Airway airway,
            Set<String> ids,
            List<Grille> grilles,
            Problems problems) {
        airway.grille()
                .ifPresent(id -> new Reference(chassis.item(), ids, "a grille", problems).check(path + ".grille", id));
        Optional<Grille> grille = airway.grille()
                .flatMap(id -> grilles.stream().filter(g -> g.id().equals(id)).findFirst());
        if (grille.isEmpty()) {
            return;
        }
        if (airway.freeArea().isEmpty()
                || airway.freeArea().get() != grille.get().freeArea()) {
            problems.add(chassis.item()
                    .problem(
                            path + ".free_area",
                            airway.freeArea().map(String::valueOf).orElse("nothing"),
                            grille.get().freeArea() + ", as grille \""
                                    + grille.get().id() + "\" has it",
                            ""));
        }
        int sizeMm = grille.get().pattern().sizeMm();
        if (!sizes(chassis.value(), airway.mount()).contains(sizeMm)) {
            problems.add(chassis.item()
                    .problem(
                            path + ".grille",
                            "a grille for " + sizeMm + " fans",
                            "one for a size of fan that hangs at mount \"" + airway.mount() + "\"",
                            ""));
        }
    }

    private static List<Integer> sizes(Chassis chassis, String mount) {
        List<Mount.Seat> made = chassis.mods().stream()
                .map(Mod::effect)
                .flatMap(e -> e.seats().stream())
                .filter(s -> s.mount().equals(mount))
                .map(s -> s.seat())
                .toList();
        List<Mount.Seat> delivered =
                PlacedSeat.findMount(chassis, mount).map(Mount::seats).orElse(List.of());
        return Stream.concat(made.stream(), delivered.stream())
                .map(s -> s.pattern().sizeMm())
                .toList();
    }
}
