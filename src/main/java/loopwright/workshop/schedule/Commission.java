package loopwright.workshop.schedule;

import java.util.List;
import java.util.Set;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.workshop.finish.PaintedPart;

/**
 * What is planned.
 *
 * @param mods all that are done
 * @param painted what they leave to paint
 * @param assemblyMin hands-on minutes of a build without any mod
 * @param dayMin minutes of a working day
 * @param late ids of mods that are decided after the build; only windows in sides can be
 */
record Commission(
        Chassis chassis, List<Mod> mods, List<PaintedPart> painted, int assemblyMin, int dayMin, Set<String> late) {

    Commission {
        mods = List.copyOf(mods);
        painted = List.copyOf(painted);
        late = Set.copyOf(late);
    }

    /** Its mods as work. */
    List<ModWork> work() {
        return mods.stream()
                .map(m -> ModWork.of(
                        chassis,
                        m,
                        painted.stream().filter(p -> p.mod().equals(m.id())).toList(),
                        late.contains(m.id())))
                .toList();
    }
}
