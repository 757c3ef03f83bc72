package loopwright.workshop.fasten;

import java.util.List;
import loopwright.catalog.standard.Fastening;
import loopwright.catalog.standard.Fastening.Engagement;
import loopwright.catalog.standard.Standards.ThreadRow;
import loopwright.quantity.Hundredths;

/**
 * The lengths of a screw that hold and that touch nothing: from the layers and the least engagement, to the layers, the
 * thread's own thickness and the depth behind it, less what is kept free.
 *
 * <p>Length is what is under a pan head, or all of a countersunk screw, whose head lies in the first layer. Engagement is
 * the usual rule of machine design (Shigley, VDI 2230; from memory), but never more than the part with the thread is thick:
 * all of a radiator's flange is the most that it gives. Common practice, no source. An unknown depth counts as none.
 *
 * @param layersHmm sum of the layers
 * @param leastHmm shortest length
 * @param mostHmm longest; below {@code leastHmm} there is no such length
 * @param reachHmm length at which the screw touches what is behind
 * @param offHmm what {@code reachHmm} may be off by, all spreads added
 */
public record LengthWindow(int layersHmm, int leastHmm, int mostHmm, int reachHmm, int offHmm) {

    /** The window of a stack of layers over a thread. */
    public static LengthWindow of(List<Clamped> layers, ThreadSeat seat, ThreadRow row, Fastening practice) {
        int sum = layers.stream().mapToInt(Clamped::thicknessHmm).sum();
        int threaded = seat.threaded().valueHmm();
        int reach = sum + threaded + seat.behind().valueHmm();
        int off = layers.stream().mapToInt(l -> l.thickness().plusMinusHmm()).sum()
                + seat.threaded().plusMinusHmm()
                + seat.behind().plusMinusHmm();
        int engaged = Math.min(wantedHmm(seat, row, practice), threaded);
        return new LengthWindow(
                sum, sum + engaged, reach - practice.tubeSafetyMm().valueHmm(), reach, off);
    }

    /** Engagement by the rule, rounded up. */
    private static int wantedHmm(ThreadSeat seat, ThreadRow row, Fastening practice) {
        double diameters = practice.engagement().stream()
                .filter(e -> e.material() == seat.material())
                .mapToDouble(Engagement::diameters)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no engagement for " + seat.material()));
        return (int) Math.ceil(diameters * row.outsideMm() * Hundredths.PER_MM - ROUNDING);
    }

    /** What a product of decimals may be off by in binary. */
    private static final double ROUNDING = 1e-6;

    /** Whether a length is inside. */
    public boolean holds(int lengthHmm) {
        return leastHmm <= lengthHmm && lengthHmm <= mostHmm;
    }

    /** The window with so much more under the head. */
    LengthWindow with(int moreHmm) {
        return new LengthWindow(layersHmm + moreHmm, leastHmm + moreHmm, mostHmm + moreHmm, reachHmm + moreHmm, offHmm);
    }
}
