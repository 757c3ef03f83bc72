package loopwright.oracle.choco;

import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import loopwright.oracle.FitAnswer;
import loopwright.oracle.ModSetOrder;
import loopwright.oracle.OracleCase;

/** Everything as one Choco model: mods, choices, places, shapes, positions and reified disjunctions. */
public final class ChocoAlone implements Function<OracleCase, FitAnswer> {

    @Override
    public FitAnswer apply(OracleCase question) {
        CModel known = new CModel(question, false);
        SortedMap<String, SortedSet<SortedSet<String>>> fits = known.fits();
        SortedMap<String, SortedSet<SortedSet<String>>> needed = new TreeMap<>();
        fits.forEach((layout, sets) -> {
            SortedSet<SortedSet<String>> least = ModSetOrder.sets();
            for (SortedSet<String> set : sets) {
                if (least.stream().noneMatch(smaller -> set.containsAll(smaller))) {
                    least.add(set);
                }
            }
            needed.put(layout, least);
        });
        SortedSet<String> unknown = new TreeSet<>();
        if (known.leftOut()) {
            unknown.addAll(new CModel(question, true).fits().keySet());
            unknown.removeAll(needed.keySet());
        }
        return new FitAnswer(needed, unknown);
    }
}
