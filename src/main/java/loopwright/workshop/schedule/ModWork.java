package loopwright.workshop.schedule;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import loopwright.catalog.chassis.Airway;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.ModSeat;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.workshop.finish.PaintedPart;

/**
 * A mod as work: what it is done on, whether it cuts, whether its panel comes off.
 *
 * @param parts ids of the panels it cuts or covers; where it names no mount, {@code piece:MOD}
 * @param painted what it leaves to paint
 * @param late whether it is decided only after the build
 */
record ModWork(Mod mod, Set<String> parts, List<PaintedPart> painted, boolean late) {

    ModWork {
        painted = List.copyOf(painted);
    }

    static ModWork of(Chassis chassis, Mod mod, List<PaintedPart> painted, boolean late) {
        Set<String> panels = new TreeSet<>();
        Mod.Effect effect = mod.effect();
        Stream.of(
                        effect.airways().stream()
                                .filter(a -> a.cut().isPresent())
                                .map(Airway::mount),
                        effect.seats().stream().map(ModSeat::mount),
                        effect.covers().stream().map(RaisedCover::mount),
                        effect.inserts().stream().map(Mod.Insert::mount))
                .flatMap(s -> s)
                .forEach(mount -> panels.add(panel(chassis, mount)));
        return new ModWork(mod, panels.isEmpty() ? Set.of("piece:" + mod.id()) : panels, painted, late);
    }

    private static String panel(Chassis chassis, String mount) {
        return chassis.mounts().stream()
                .filter(m -> m.id().equals(mount))
                .map(Mount::panel)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no mount " + mount));
    }

    /** Whether metal or acrylic is cut or drilled. */
    boolean cuts() {
        return mod.look().visibleCuts() + mod.look().hiddenCuts() > 0
                || mod.kind() == Mod.Kind.DRILL_PATTERN
                || mod.kind() == Mod.Kind.CUT_WINDOW;
    }

    /** Whether it is done on a panel that is off the machine: a side with a window. */
    boolean loose() {
        return mod.kind() == Mod.Kind.CUT_WINDOW;
    }

    /** Whether it only takes something out, with a driver. */
    boolean unscrews() {
        return mod.kind() == Mod.Kind.TAKE_OUT && !cuts();
    }

    /** Whether it cuts something out that is in the way. */
    boolean takesOut() {
        return mod.kind() == Mod.Kind.TAKE_OUT && cuts();
    }

    boolean paints() {
        return mod.work().paintMin() > 0 || !painted.isEmpty();
    }

    /** A task at the case. */
    String task(String stage) {
        return stage + ":" + mod.id();
    }

    /** The last task before it can be fitted or painted. */
    String lastTask() {
        return task(cuts() ? "deburr" : "fit");
    }

    /** The first task. */
    String firstTask() {
        return task(cuts() ? "mark" : "fit");
    }

    /** What one of its parts is called. */
    static String words(String part) {
        return part.replaceFirst("^piece:", "").replace('-', ' ').toLowerCase(Locale.ROOT);
    }

    Optional<String> modId() {
        return Optional.of(mod.id());
    }
}
