package loopwright.loop.fluid;

import loopwright.catalog.part.Coolant;

/** The liquid that a coolant of the catalogue is; its inhibitor is left out. */
public final class CoolantLiquid {

    private static final double PERCENT = 100;

    private CoolantLiquid() {}

    /**
     * Returns the coolant's liquid; water for a mixture with no glycol in it.
     *
     * @throws IllegalArgumentException if a glycol's share is not given once, by mass or by volume, or is above 60 % by mass
     */
    public static Liquid of(Coolant coolant) {
        return switch (coolant.base()) {
            case WATER -> new Water();
            case PROPYLENE_GLYCOL -> mixture(coolant, Glycol.PROPYLENE);
            case ETHYLENE_GLYCOL -> mixture(coolant, Glycol.ETHYLENE);
        };
    }

    private static Liquid mixture(Coolant coolant, Glycol glycol) {
        if (coolant.glycolMassPercent().isPresent()
                == coolant.glycolVolumePercent().isPresent()) {
            throw new IllegalArgumentException(
                    "coolant " + coolant.id() + " must give its glycol once, by mass or by volume");
        }
        double massFraction = coolant.glycolMassPercent()
                .map(mass -> mass / PERCENT)
                .or(() -> coolant.glycolVolumePercent().map(volume -> glycol.massFraction(volume / PERCENT)))
                .orElseThrow();
        return massFraction == 0 ? new Water() : new GlycolWater(glycol, massFraction);
    }
}
