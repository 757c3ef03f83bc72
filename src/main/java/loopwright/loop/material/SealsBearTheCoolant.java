package loopwright.loop.material;

import java.util.List;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Tube;

/** What is in the coolant does not swell its seals, nor rubber tube. */
final class SealsBearTheCoolant implements MaterialRule {

    @Override
    public String id() {
        return "material.seals";
    }

    @Override
    public String source() {
        return "swelling in mineral oil by the method of ASTM D471, read in secondary texts; " + PRACTICE;
    }

    @Override
    public Said check(LoopMaterials loop) {
        Coolant.Seal seal = loop.practice().usualSeal();
        boolean rubberTube =
                loop.tube().material().filter(m -> m == Tube.Material.EPDM).isPresent();
        if (loop.coolant().additives().isEmpty()) {
            return Said.unknown("nobody says which seals " + loop.coolant().id() + " attacks: ask its maker");
        }
        List<Coolant.Seal> attacked = loop.coolant().additives().orElseThrow().attacks();
        if (attacked.contains(Coolant.Seal.EPDM) && rubberTube) {
            return Said.broken(
                    loop.coolant().id() + " swells EPDM: tube " + loop.tube().id() + " and rings of EPDM");
        }
        return attacked.contains(seal)
                ? Said.broken(loop.coolant().id() + " swells " + seal + ", which rings are usually made of")
                : Said.ok(loop.coolant().id() + " bears with " + seal + " (assumed of all rings: ask the makers)");
    }
}
