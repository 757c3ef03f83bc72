package loopwright.oracle;

import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import loopwright.oracle.brute.BruteForce;
import loopwright.oracle.brute.Fault;

/** Engines with one mistake each, to see that the cases would catch it. */
final class FaultyOracles {
    private FaultyOracles() {}

    /** Every mistake by name. */
    static SortedMap<Fault, Function<OracleCase, FitAnswer>> all() {
        SortedMap<Fault, Function<OracleCase, FitAnswer>> out = new TreeMap<>();
        for (Fault fault : Fault.values()) {
            if (fault != Fault.NONE) {
                out.put(fault, new BruteForce(fault));
            }
        }
        return out;
    }
}
