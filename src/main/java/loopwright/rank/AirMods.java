package loopwright.rank;

import java.util.List;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.fit.ModSet;

/** Which mods change the air at which mount: sets that differ in others only share their air. */
final class AirMods {

    private final long[] byMount;
    private final long any;

    AirMods(Chassis chassis) {
        byMount = new long[chassis.mounts().size()];
        long all = 0;
        List<Mod> mods = chassis.mods();
        for (int m = 0; m < byMount.length; m++) {
            String mount = chassis.mounts().get(m).id();
            for (int i = 0; i < mods.size(); i++) {
                Mod.Effect effect = mods.get(i).effect();
                boolean touches = effect.airways().stream()
                                .anyMatch(a -> a.mount().equals(mount))
                        || effect.covers().stream().anyMatch(c -> c.mount().equals(mount));
                byMount[m] |= touches ? 1L << i : 0;
            }
            all |= byMount[m];
        }
        any = all;
    }

    /** The mods of a set that change the air at a mount. */
    ModSet at(int mount, ModSet mods) {
        return new ModSet(mods.bits() & byMount[mount]);
    }

    /** The mods of a set that change any air. */
    ModSet anywhere(ModSet mods) {
        return new ModSet(mods.bits() & any);
    }
}
