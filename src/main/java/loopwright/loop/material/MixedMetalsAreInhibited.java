package loopwright.loop.material;

import java.util.Set;
import java.util.TreeSet;

/** Copper, brass and nickel in one loop corrode each other slowly: the coolant is inhibited. */
final class MixedMetalsAreInhibited implements MaterialRule {

    @Override
    public String id() {
        return "material.inhibitor";
    }

    @Override
    public String source() {
        return PRACTICE;
    }

    @Override
    public Said check(LoopMaterials loop) {
        if (loop.coolant().inhibited()) {
            return Said.ok("inhibited: " + loop.coolant().id());
        }
        Set<Wetted> metals = new TreeSet<>();
        loop.pieces().forEach(p -> metals.add(p.wetted()));
        loop.fittings().all().forEach(f -> metals.add(f.wetted()));
        metals.remove(Wetted.PLASTIC);
        return metals.size() > 1
                ? Said.warn(loop.coolant().id() + " has no inhibitor, and copper, brass and nickel corrode each other"
                        + " slowly: add one or take another")
                : Said.ok("not inhibited, but one metal only");
    }
}
