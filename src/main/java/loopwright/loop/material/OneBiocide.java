package loopwright.loop.material;

import java.util.Set;
import java.util.TreeSet;
import loopwright.catalog.part.Coolant;

/** One biocide and no second; silver and inhibitor fight. */
final class OneBiocide implements MaterialRule {

    @Override
    public String id() {
        return "material.one-biocide";
    }

    @Override
    public String source() {
        return PRACTICE + "; damage to nickel plating by silver is claimed, from memory";
    }

    @Override
    public Said check(LoopMaterials loop) {
        Set<Coolant.Biocide> all = new TreeSet<>(loop.addedBiocides());
        loop.coolant().additives().ifPresent(a -> all.addAll(a.biocides()));
        if (!loop.addedBiocides().isEmpty() && loop.coolant().additives().isEmpty()) {
            return Said.unknown("nobody says whether " + loop.coolant().id()
                    + " has a biocide already: ask before adding " + BiocideWords.of(loop.addedBiocides()));
        }
        if (all.size() > 1) {
            return Said.broken("two biocides at once (" + BiocideWords.of(all) + ") in "
                    + loop.coolant().id() + ": leave the added one out");
        }
        if (all.contains(Coolant.Biocide.SILVER) && loop.coolant().inhibited()) {
            return Said.warn("silver with the inhibitor of " + loop.coolant().id()
                    + ": they fight, and nickel plating may suffer");
        }
        return all.isEmpty() && loop.coolant().additives().isEmpty()
                ? Said.unknown(
                        "nobody says what biocide is in " + loop.coolant().id())
                : Said.ok(all.isEmpty() ? "no biocide twice: there is none" : "one biocide: " + BiocideWords.of(all));
    }
}
