package loopwright.loop;

import java.util.OptionalDouble;
import loopwright.loop.air.AirPath;

/**
 * Sound of what turns, as sound powers that add.
 *
 * <p><b>Units.</b> dB(A) at 1 m, kept as {@link SoundPower}.
 *
 * <p><b>Accuracy.</b> Levels of sheets are weak; what a core and a grille add are round figures. Differences between counts,
 * duties and ways to mount are better than the sum itself.
 *
 * <p><b>Source.</b> Fan laws: {@link Sound}. What is added: see the constants.
 */
public final class MountSound {

    /** What a radiator's core before or behind it adds to a fan, dB; common practice gives 2 to 4, no source. */
    static final double RADIATOR_DB = 3;

    /** What a grille, a filter or a perforated skin adds to a fan close to it, dB. ASSUMED. */
    static final double GRILLE_DB = 1;

    /** From this open share on a panel adds nothing, dimensionless: rings cut out, thin wires. ASSUMED. */
    static final double OPEN_ENOUGH = 0.75;

    private MountSound() {}

    /** All fans of a mount. */
    public static SoundPower of(Machine.FanMount mount) {
        Machine.Fans fans = mount.fans();
        double addedDB = (mount.radiator().isPresent() ? RADIATOR_DB : 0)
                + grilleDB(mount.air().path());
        double levelDBA = Sound.levelDBA(fans.fan(), fans.duty()) + addedDB;
        return SoundPower.ofDBA(levelDBA).times(fans.row() * fans.layers());
    }

    private static double grilleDB(AirPath path) {
        OptionalDouble filter = path.filterShare();
        boolean covered = path.cover().isPresent() && path.cover().get().skinShare() < OPEN_ENOUGH;
        return path.openShare() < OPEN_ENOUGH || filter.orElse(1) < OPEN_ENOUGH || covered ? GRILLE_DB : 0;
    }

    /** A pump. */
    public static SoundPower of(Machine.PumpAt pump) {
        return SoundPower.ofDBA(Sound.levelDBA(pump.pump(), pump.duty()));
    }
}
