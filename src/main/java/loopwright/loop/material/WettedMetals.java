package loopwright.loop.material;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.Radiator.Metal;
import loopwright.loop.Machine;

/**
 * The metals that coolant touches in radiators and blocks.
 *
 * <p>Aluminium beside copper in one coolant makes a cell, and the aluminium dissolves: [MILSTD889] (its series in sea water;
 * in coolant the order is the same).
 */
public record WettedMetals(Set<Metal> metals) {

    /** Copies. */
    public WettedMetals {
        metals = Set.copyOf(metals);
    }

    /** One metal. */
    public static WettedMetals of(Metal metal) {
        return new WettedMetals(Set.of(metal));
    }

    /** Of some radiators. */
    public static WettedMetals ofRadiators(List<Radiator> radiators) {
        Set<Metal> out = new TreeSet<>();
        radiators.forEach(r -> out.add(r.ports().metal()));
        return new WettedMetals(out);
    }

    /** Of a loop's blocks. */
    public static WettedMetals ofBlocks(Machine.Water water) {
        Set<Metal> out = new TreeSet<>();
        water.blocks().forEach(b -> out.add(b.flow().metal()));
        return new WettedMetals(out);
    }

    /** Both. */
    public WettedMetals and(WettedMetals other) {
        Set<Metal> out = new TreeSet<>(metals);
        out.addAll(other.metals);
        return new WettedMetals(out);
    }

    /** Whether aluminium and copper are both among them. */
    public boolean mixes() {
        return metals.contains(Metal.ALUMINIUM) && metals.contains(Metal.COPPER);
    }
}
