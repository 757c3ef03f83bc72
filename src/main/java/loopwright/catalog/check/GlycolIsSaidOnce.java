package loopwright.catalog.check;

import java.util.Optional;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.read.Item;
import loopwright.catalog.read.Problems;

/** A coolant with glycol says once how much, by mass or by volume; water has none. */
final class GlycolIsSaidOnce implements Check {

    private static final String BY_MASS = "glycol_mass_percent";
    private static final String BY_VOLUME = "glycol_volume_percent";

    /** Ethylene glycol by volume that is 60 % by mass, %; [ASHRAEBrines]. Propylene glycol's is 60. */
    private static final double ETHYLENE_VOLUME_MAX_PERCENT = 57.8;

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Coolant> coolant : items.of(Coolant.class)) {
            if (coolant.value().base() == Coolant.BaseLiquid.WATER) {
                hasNone(coolant.item(), BY_MASS, coolant.value().glycolMassPercent(), problems);
                hasNone(coolant.item(), BY_VOLUME, coolant.value().glycolVolumePercent(), problems);
            } else {
                saidOnce(coolant, problems);
                isCovered(coolant, problems);
            }
        }
    }

    private static void hasNone(Item item, String field, Optional<Double> percent, Problems problems) {
        percent.filter(share -> share > 0)
                .ifPresent(share -> problems.add(item.problem(
                        field,
                        share + " % of glycol in water",
                        "0 or no such field",
                        "Or give the base that it is mixed with.")));
    }

    private static void saidOnce(Items.Placed<Coolant> coolant, Problems problems) {
        boolean byMass = coolant.value().glycolMassPercent().isPresent();
        boolean byVolume = coolant.value().glycolVolumePercent().isPresent();
        if (byMass != byVolume) {
            return;
        }
        problems.add(coolant.item()
                .problem(
                        byMass ? BY_VOLUME : "base",
                        byMass ? "a second share beside " + BY_MASS : "a glycol without its share",
                        "exactly one of " + BY_MASS + " and " + BY_VOLUME,
                        "The same number is another mixture by mass than by volume."));
    }

    private static void isCovered(Items.Placed<Coolant> coolant, Problems problems) {
        if (coolant.value().base() != Coolant.BaseLiquid.ETHYLENE_GLYCOL) {
            return;
        }
        coolant.value()
                .glycolVolumePercent()
                .filter(share -> share > ETHYLENE_VOLUME_MAX_PERCENT)
                .ifPresent(share -> problems.add(coolant.item()
                        .problem(
                                BY_VOLUME,
                                share + " %",
                                "at most " + ETHYLENE_VOLUME_MAX_PERCENT + " % of ethylene glycol",
                                "That is 60 % by mass; beyond, its properties are not known here.")));
    }
}
