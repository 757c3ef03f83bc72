package loopwright.loop.study;

import java.util.Optional;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.part.Radiator;

/**
 * Radiators that no catalogue has: another's with one measure changed.
 *
 * <p>What a bench measured of a radiator is not true of a changed one, so all of these go by the formulas alone; compare them with
 * {@link #byFormula}, not with the radiator itself. Models keep what they know by id, so each has its own.
 */
final class OtherRadiator {

    /** Deepest core that the formulas take, mm; the catalogue's own limit. */
    static final double DEPTH_MAX_MM = 100;

    private OtherRadiator() {}

    /** The same without what was measured of it. */
    static Radiator byFormula(Radiator radiator) {
        return changed(
                radiator, " by formula", radiator.pattern(), radiator.core().depthMm());
    }

    /** With a deeper core; empty past {@link #DEPTH_MAX_MM}. The coolant's loss stays. */
    static Optional<Radiator> deeper(Radiator radiator, double moreMm) {
        double depthMm = radiator.core().depthMm() + moreMm;
        return depthMm <= DEPTH_MAX_MM
                ? Optional.of(changed(radiator, " +" + moreMm + " mm", radiator.pattern(), depthMm))
                : Optional.empty();
    }

    /** With one section more; empty past what the trade makes. The coolant's loss stays, most of it is in the tanks. */
    static Optional<Radiator> longer(Radiator radiator) {
        Pattern own = radiator.pattern();
        if (own.fans() >= Pattern.MAX_FANS) {
            return Optional.empty();
        }
        Pattern pattern = new Pattern(own.fans() + 1, own.sizeMm());
        return Optional.of(
                changed(radiator, " +1 section", pattern, radiator.core().depthMm()));
    }

    private static Radiator changed(Radiator radiator, String how, Pattern pattern, double depthMm) {
        Radiator.Core core = radiator.core();
        return new Radiator(
                radiator.id() + how,
                radiator.title(),
                radiator.variantOf(),
                radiator.buy(),
                pattern,
                radiator.body(),
                radiator.ports(),
                new Radiator.Core(
                        depthMm,
                        core.finsPerInch(),
                        core.tubeRows(),
                        core.coolantML(),
                        core.loss(),
                        core.fins(),
                        core.tubes(),
                        Radiator.Measured.NOTHING));
    }
}
