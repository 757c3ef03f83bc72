package loopwright.fit;

import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;

/**
 * A set of a chassis's mods, as bits in the chassis's order.
 *
 * @param bits bit i is the chassis's i-th mod; a chassis has at most 62
 */
public record ModSet(long bits) implements Comparable<ModSet> {

    /** No mod at all: the chassis as delivered. */
    public static final ModSet NONE = new ModSet(0);

    /** Whether the chassis's i-th mod is in it. */
    public boolean has(int index) {
        return (bits >>> index & 1L) != 0;
    }

    /** Whether every mod of this set is in the other. */
    public boolean isSubsetOf(ModSet other) {
        return (bits & ~other.bits) == 0;
    }

    /** How many mods. */
    public int size() {
        return Long.bitCount(bits);
    }

    /** The mods that are in both. */
    public ModSet and(ModSet other) {
        return new ModSet(bits & other.bits);
    }

    /** The mods, in the chassis's order. */
    public List<Mod> mods(Chassis chassis) {
        List<Mod> out = new ArrayList<>();
        for (int i = 0; i < chassis.mods().size(); i++) {
            if (has(i)) {
                out.add(chassis.mods().get(i));
            }
        }
        return List.copyOf(out);
    }

    /** The ids, sorted. */
    public List<String> ids(Chassis chassis) {
        return mods(chassis).stream().map(Mod::id).sorted().toList();
    }

    /** Smaller sets first, then by bits. */
    @Override
    public int compareTo(ModSet other) {
        int bySize = Integer.compare(size(), other.size());
        return bySize != 0 ? bySize : Long.compare(bits, other.bits);
    }
}
