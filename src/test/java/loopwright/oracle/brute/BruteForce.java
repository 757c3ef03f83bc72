package loopwright.oracle.brute;

import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import loopwright.oracle.FitAnswer;
import loopwright.oracle.ModSetOrder;
import loopwright.oracle.OracleCase;

/** Walks everything: mod sets, choices, places, layouts, and every hundredth of short slots. */
public final class BruteForce implements Function<OracleCase, FitAnswer> {
    private final Fault fault;
    private final Function<OracleCase, BruteApart> apart;

    /** The truth, or the truth with one mistake. */
    public BruteForce(Fault fault) {
        this(fault, question -> BruteApart.of(question, fault));
    }

    private BruteForce(Fault fault, Function<OracleCase, BruteApart> apart) {
        this.fault = fault;
        this.apart = apart;
    }

    /** What fits if every dimension is off in our favour. */
    public static BruteForce atBestCase() {
        return new BruteForce(Fault.NONE, question -> BruteApart.atBestCase(question, Fault.NONE));
    }

    @Override
    public FitAnswer apply(OracleCase question) {
        BruteRun known = new BruteRun(question, apart.apply(question), fault, false);
        SortedMap<String, SortedSet<SortedSet<String>>> fits = known.fits();
        SortedMap<String, SortedSet<SortedSet<String>>> needed = new TreeMap<>();
        fits.forEach((layout, sets) -> {
            SortedSet<SortedSet<String>> least = least(sets, known.validSets());
            if (!least.isEmpty()) {
                needed.put(layout, least);
            }
        });
        SortedSet<String> unknown = new TreeSet<>();
        if (known.leftOut()) {
            unknown.addAll(new BruteRun(question, apart.apply(question), fault, true)
                    .fits()
                    .keySet());
            unknown.removeAll(fits.keySet());
        }
        return new FitAnswer(needed, unknown);
    }

    /** Every mod set that each layout fits with, needed or not. */
    public SortedMap<String, SortedSet<SortedSet<String>>> fits(OracleCase question) {
        return new BruteRun(question, apart.apply(question), fault, false).fits();
    }

    /** Every valid mod set. */
    public static List<SortedSet<String>> validSets(OracleCase question) {
        return BruteModSets.valid(
                question.chassis().mods(), question.brief().limits().mods());
    }

    /** How many choices of parts and places there are, mod set by mod set, before any pair is looked at. */
    public static int choices(OracleCase question, Fault fault) {
        BruteChoices choices = new BruteChoices(question.catalog(), question.chassis(), question.brief(), fault);
        return validSets(question).stream()
                .mapToInt(set -> choices.choices(set).size())
                .sum();
    }

    private SortedSet<SortedSet<String>> least(SortedSet<SortedSet<String>> sets, List<SortedSet<String>> validSets) {
        SortedSet<SortedSet<String>> out = ModSetOrder.sets();
        for (SortedSet<String> set : sets) {
            boolean smaller = false;
            boolean fromAbove = false;
            for (SortedSet<String> other : sets) {
                boolean below = set.size() > other.size() && set.containsAll(other);
                smaller |= below && (fault != Fault.ONE_LESS_ONLY || set.size() == other.size() + 1);
                fromAbove |= other.containsAll(set) && isMaximal(other, validSets);
            }
            if (!smaller && (fromAbove || fault != Fault.MONOTONE_FROM_ABOVE)) {
                out.add(ModSetOrder.of(set));
            }
        }
        return out;
    }

    private static boolean isMaximal(SortedSet<String> set, List<SortedSet<String>> validSets) {
        return validSets.stream().noneMatch(other -> other.size() > set.size() && other.containsAll(set));
    }
}
