package loopwright.oracle;

import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import loopwright.oracle.brute.BruteForce;
import loopwright.oracle.brute.Fault;

/** Counts how many cases are hard in which way. */
final class CaseCensus {
    int cases;
    int nothingFits;
    int unknown;
    int layouts;
    int mostLayouts;
    /** Verdict of a layout with a mod set is another if each pair of bodies gets positions of its own. */
    int pairsMislead;
    /** A layout fits, but not with each stack at its own first position. */
    int jointChoice;

    /** The brief refuses tight places. */
    int refuseTight;
    /** ... and something fits all the same. */
    int fitWithoutTight;
    /** Verdict of a layout with a mod set is another if tight places are allowed. */
    int hangsOnTight;
    /** Verdict of a layout with a mod set is another if an axis has the spread of the next. */
    int hangsOnSpread;

    /** In how many cases what fits is another if one rule of electrics is taken out, rule by rule. */
    final SortedMap<String, Integer> hangsOnRule = new TreeMap<>();
    /** ... if any of them is. */
    int hangsOnElectrics;

    int hangsOnJoint;
    int notMonotone;
    int threeMounts;
    /** Verdict of a layout is another if each pair of stacks gets positions of its own. */
    int stackPairsMislead;

    void count(OracleCase question) {
        BruteForce truth = new BruteForce(Fault.NONE);
        FitAnswer answer = truth.apply(question);
        SortedMap<String, SortedSet<SortedSet<String>>> fits = truth.fits(question);
        boolean pairs = !fits.equals(new BruteForce(Fault.PAIRS_ONLY).fits(question));
        boolean choice = !fits.equals(new BruteForce(Fault.FIRST_POSITION).fits(question));
        cases++;
        layouts += fits.size();
        mostLayouts = Math.max(mostLayouts, fits.size());
        nothingFits += fits.isEmpty() ? 1 : 0;
        unknown += answer.unknown().isEmpty() ? 0 : 1;
        pairsMislead += pairs ? 1 : 0;
        jointChoice += choice ? 1 : 0;
        hangsOnJoint += pairs || choice ? 1 : 0;
        if (question.brief().limits().mods().noTightPlaces()) {
            refuseTight++;
            fitWithoutTight += fits.isEmpty() ? 0 : 1;
            hangsOnTight += fits.equals(new BruteForce(Fault.TIGHT_ALLOWED).fits(question)) ? 0 : 1;
            hangsOnSpread += fits.equals(new BruteForce(Fault.SPREAD_OF_NEXT_AXIS).fits(question)) ? 0 : 1;
        }
        countRules(question, fits);
        notMonotone += notMonotone(fits, BruteForce.validSets(question)) ? 1 : 0;
        if (question.chassis().mounts().size() == 3) {
            threeMounts++;
            stackPairsMislead += fits.equals(new BruteForce(Fault.STACK_PAIRS_ONLY).fits(question)) ? 0 : 1;
        }
    }

    private void countRules(OracleCase question, SortedMap<String, SortedSet<SortedSet<String>>> fits) {
        boolean any = false;
        for (Fault fault : Fault.values()) {
            if (!fault.ruleLeftOut().isEmpty()) {
                boolean other = BruteForce.choices(question, fault) > BruteForce.choices(question, Fault.NONE)
                        && !fits.equals(new BruteForce(fault).fits(question));
                hangsOnRule.merge(fault.ruleLeftOut(), other ? 1 : 0, Integer::sum);
                any |= other;
            }
        }
        hangsOnElectrics += any ? 1 : 0;
    }

    private static boolean notMonotone(
            SortedMap<String, SortedSet<SortedSet<String>>> fits, List<SortedSet<String>> validSets) {
        for (SortedSet<SortedSet<String>> sets : fits.values()) {
            for (SortedSet<String> set : sets) {
                if (validSets.stream().anyMatch(v -> v.containsAll(set) && !sets.contains(v))) {
                    return true;
                }
            }
        }
        return false;
    }

    @Override
    public String toString() {
        SortedMap<String, Integer> shares = new TreeMap<>();
        shares.put("cases", cases);
        shares.put("nothing fits", nothingFits);
        shares.put("some layout unknown", unknown);
        shares.put("layouts that fit", layouts);
        shares.put("most layouts in a case", mostLayouts);
        shares.put("pairs of bodies mislead", pairsMislead);
        shares.put("joint choice of positions", jointChoice);
        shares.put("hangs on joint positions", hangsOnJoint);
        shares.put("tight places refused", refuseTight);
        shares.put("tight places refused and something fits", fitWithoutTight);
        shares.put("hangs on tight places", hangsOnTight);
        shares.put("hangs on an axis's spread", hangsOnSpread);
        shares.put("hangs on electrics", hangsOnElectrics);
        shares.putAll(hangsOnRule);
        shares.put("not monotone in mods", notMonotone);
        shares.put("three mounts", threeMounts);
        shares.put("pairs of stacks mislead", stackPairsMislead);
        return shares.toString();
    }
}
