package loopwright.loop.material;

import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.TubeFitting;

/** What coolant touches. */
public enum Wetted {
    /** Copper. */
    COPPER(true),
    /** Brass: copper and zinc, melted together. */
    BRASS(true),
    /** Brass under nickel; where the plating is thin, brass. */
    NICKEL_BRASS(true),
    /** Aluminium. */
    ALUMINIUM(false),
    /** Anything under zinc. */
    ZINC_PLATED(false),
    /** Stainless steel. */
    STAINLESS(false),
    /** Plastic. */
    PLASTIC(false);

    private final boolean copperAlloy;

    Wetted(boolean copperAlloy) {
        this.copperAlloy = copperAlloy;
    }

    /** Whether aluminium beside it dissolves. */
    public boolean isCopperAlloy() {
        return copperAlloy;
    }

    /** What a radiator or block is made of. */
    public static Wetted of(Radiator.Metal metal) {
        return metal == Radiator.Metal.ALUMINIUM ? ALUMINIUM : COPPER;
    }

    /** What a fitting is made of. */
    public static Wetted of(TubeFitting.Wetted wetted) {
        return valueOf(wetted.name());
    }
}
