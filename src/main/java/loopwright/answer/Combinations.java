package loopwright.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loopwright.answer.Unlocks.Combination;
import loopwright.fit.FitCase;
import loopwright.fit.FoundLayout;
import loopwright.fit.ModSet;
import loopwright.rank.ModBill;

/**
 * Layouts with a needed mod set that no other beats in conductance, labour and cost; of equal ones the smallest key.
 *
 * <p>Conductance is compared in milliwatts per kelvin, half up.
 */
final class Combinations {

    private static final double MILLI = 1000;

    private final FitCase fitCase;
    private final Cooling cooling;
    private final Map<ModSet, ModBill> bills = new HashMap<>();

    Combinations(FitCase fitCase, Cooling cooling) {
        this.fitCase = fitCase;
        this.cooling = cooling;
    }

    List<Combination> unbeaten(List<FoundLayout> fits) {
        List<Combination> all = new ArrayList<>();
        for (FoundLayout found : fits) {
            for (ModSet mods : found.needed()) {
                ModBill bill = bills.computeIfAbsent(mods, m -> ModBill.of(fitCase.catalog(), fitCase.chassis(), m));
                all.add(new Combination(
                        found,
                        mods,
                        cooling.conductanceWPerK(found.layout(), mods),
                        bill,
                        bill.costCents(fitCase.brief().terms())));
            }
        }
        all.sort(Comparator.comparingLong(Combination::costCents)
                .thenComparingInt(c -> c.bill().handsOnMin())
                .thenComparingLong(c -> -milli(c)));
        List<Combination> out = new ArrayList<>();
        for (Combination one : all) {
            boolean beaten = out.stream().anyMatch(o -> beats(o, one));
            if (!beaten) {
                int twin = twin(out, one);
                if (twin < 0) {
                    out.add(one);
                } else if (one.layout()
                                .layout()
                                .key()
                                .compareTo(out.get(twin).layout().layout().key())
                        < 0) {
                    out.set(twin, one);
                }
            }
        }
        return List.copyOf(out);
    }

    private static int twin(List<Combination> kept, Combination one) {
        for (int i = 0; i < kept.size(); i++) {
            Combination other = kept.get(i);
            if (milli(other) == milli(one)
                    && other.bill().handsOnMin() == one.bill().handsOnMin()
                    && other.costCents() == one.costCents()) {
                return i;
            }
        }
        return -1;
    }

    private static long milli(Combination one) {
        return Math.round(one.conductanceWPerK() * MILLI);
    }

    /** Whether a is no worse in anything and better in something. */
    private static boolean beats(Combination a, Combination b) {
        boolean noWorse = milli(a) >= milli(b)
                && a.bill().handsOnMin() <= b.bill().handsOnMin()
                && a.costCents() <= b.costCents();
        boolean better =
                milli(a) > milli(b) || a.bill().handsOnMin() < b.bill().handsOnMin() || a.costCents() < b.costCents();
        return noWorse && better;
    }
}
