package loopwright.workshop.template;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.part.ScrewThread;

/** Settings from the demo catalogue. */
public final class Demo {

    /** The demo catalogue. */
    public static final Catalog CATALOG = CatalogReader.read(Path.of("catalogs"));

    private Demo() {}

    /** Mods of a chassis, and what hangs. */
    public static Setting setting(String chassis, Set<String> mods, List<Setting.Hung> hung) {
        Chassis one = CATALOG.chassis(chassis);
        return new Setting(
                CATALOG,
                one,
                one.mods().stream().filter(m -> mods.contains(m.id())).toList(),
                hung,
                new Setting.Identity("demo", "none", CATALOG.version(), ""));
    }

    /** A mod alone, with those that it needs; nothing hangs. */
    public static Setting alone(String chassis, String mod) {
        Set<String> mods = new TreeSet<>(Set.of(mod));
        List<Mod> all = CATALOG.chassis(chassis).mods();
        boolean grows = true;
        while (grows) {
            List<String> more = new ArrayList<>();
            all.stream()
                    .filter(m -> mods.contains(m.id()))
                    .forEach(m -> more.addAll(m.rules().requires()));
            grows = mods.addAll(more);
        }
        return setting(chassis, mods, List.of());
    }

    /** A stack with M3 screws. */
    public static Setting.Hung hung(String mount, String pattern, int alongHmm, int asideHmm) {
        return new Setting.Hung(
                mount, Pattern.parse(pattern), alongHmm, asideHmm, Optional.empty(), Optional.of(ScrewThread.M3));
    }

    /** The slim case's left side, drilled for two 120 fans that hang 145 from the front and 157 up. */
    public static Setting leftOfSlim() {
        return setting("slim", Set.of("left-pattern-240"), List.of(hung("left", "2x120", 14_500, 15_700)));
    }
}
