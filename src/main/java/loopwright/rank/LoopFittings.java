package loopwright.rank;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.Predicate;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Tube;
import loopwright.catalog.part.TubeFitting;
import loopwright.catalog.part.TubeFitting.Kind;
import loopwright.fit.FitCase;

/**
 * What fittings a build is reckoned with before its runs are planned: two straight ones for each part of the loop, the trade's
 * number of right-angle elbows for each but the reservoir, one drain.
 *
 * <p>Always the cheapest that the brief allows, that takes its tube and may be in a loop with copper. A kind that the catalogue
 * does not have costs nothing.
 *
 * @param straightCents price of a straight fitting
 * @param elbowsCents price of the elbows at one part
 * @param leadDays the longest lead time among them
 */
public record LoopFittings(long straightCents, long elbowsCents, long drainCents, int leadDays) {

    /** Ends of tube at a part. */
    static final int ENDS = 2;

    /** Those of a case. */
    public static LoopFittings of(FitCase fitCase) {
        Optional<TubeFitting> straight = cheapest(fitCase, Kind.STRAIGHT);
        Optional<TubeFitting> elbow = cheapest(fitCase, Kind.ELBOW_90);
        Optional<TubeFitting> drain = cheapest(fitCase, Kind.DRAIN);
        int elbows = fitCase.catalog().practice().loop().elbowsPerPart();
        return new LoopFittings(
                cents(straight),
                elbows * cents(elbow),
                cents(drain),
                Math.max(Math.max(lead(straight), elbows > 0 ? lead(elbow) : 0), lead(drain)));
    }

    /**
     * What they cost in a whole loop.
     *
     * @param tank whether it has a reservoir of its own
     */
    public long totalCents(int blocks, int radiators, boolean tank) {
        return drainCents + partCents() * (1 + blocks + radiators) + (tank ? reservoirCents() : 0);
    }

    /** The fitting of a kind that a case is reckoned with. */
    static Optional<TubeFitting> cheapest(FitCase fitCase, Kind kind) {
        Tube tube = Cores.cheapest(
                fitCase.catalog(), Tube.class, fitCase.brief().loop().tube());
        return cheapest(fitCase, kind, f -> kind != Kind.STRAIGHT || f.takes(tube));
    }

    /** How many parts of a build's loop have fittings besides a reservoir: the pump, blocks, radiators. */
    static int portedParts(Build build) {
        long radiators =
                build.fittings().stream().filter(f -> f.radiator().isPresent()).count();
        return 1 + build.machine().water().blocks().size() + (int) radiators;
    }

    /** At a pump, a block or a radiator. */
    long partCents() {
        return reservoirCents() + elbowsCents;
    }

    /** At a reservoir of its own. */
    long reservoirCents() {
        return ENDS * straightCents;
    }

    private static Optional<TubeFitting> cheapest(FitCase fitCase, Kind kind, Predicate<TubeFitting> goes) {
        Choice wish = fitCase.brief().loop().fittings().orElse(Choice.ANY);
        return fitCase.catalog().all(TubeFitting.class).stream()
                .filter(f -> f.kind() == kind && f.isSoundInCopper() && goes.test(f))
                .filter(f -> wish.anyOf().isEmpty() || wish.anyOf().contains(f.id()))
                .min(Comparator.comparingLong((TubeFitting f) -> f.buy().priceCents())
                        .thenComparing(Part::id));
    }

    private static long cents(Optional<TubeFitting> fitting) {
        return fitting.map(f -> f.buy().priceCents()).orElse(0L);
    }

    private static int lead(Optional<TubeFitting> fitting) {
        return fitting.map(f -> f.buy().leadDays()).orElse(0);
    }
}
