package loopwright.oracle.rank;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Reservoir;
import loopwright.catalog.part.Tube;
import loopwright.catalog.part.TubeFitting;
import loopwright.oracle.OracleCase;
import loopwright.quantity.Dimension;

/** The fitting of each kind that is taken, if there is one, and how many elbows each part wants. */
record BruteFittings(
        Optional<TubeFitting> straight,
        Optional<TubeFitting> elbow,
        Optional<TubeFitting> drain,
        int elbowsPerPart,
        RankFault fault) {

    private static final int STRAIGHTS_PER_PART = 2;

    static BruteFittings of(OracleCase question, Tube tube, RankFault fault) {
        List<String> any = question.brief().loop().fittings().map(Choice::anyOf).orElse(List.of());
        List<TubeFitting> inOrder = question.catalog().all(TubeFitting.class).stream()
                .filter(f -> any.isEmpty() || any.contains(f.id()) || fault == RankFault.ANY_FITTINGS)
                .filter(f -> isClean(f, fault))
                .sorted(Comparator.comparingLong((TubeFitting f) -> f.buy().priceCents())
                        .thenComparing(TubeFitting::id))
                .toList();
        boolean every = fault == RankFault.FITTINGS_TAKE_ANY_TUBE;
        return new BruteFittings(
                inOrder.stream()
                        .filter(f -> f.kind() == TubeFitting.Kind.STRAIGHT)
                        .filter(f ->
                                every || (is(f.tubeBoreMm(), tube.boreMm()) && is(f.tubeOutsideMm(), tube.outsideMm())))
                        .findFirst(),
                inOrder.stream()
                        .filter(f -> f.kind() == TubeFitting.Kind.ELBOW_90)
                        .findFirst(),
                inOrder.stream().filter(f -> f.kind() == TubeFitting.Kind.DRAIN).findFirst(),
                question.catalog().practice().loop().elbowsPerPart(),
                fault);
    }

    private static boolean isClean(TubeFitting f, RankFault fault) {
        boolean aluminium = f.wetted() == TubeFitting.Wetted.ALUMINIUM;
        boolean let = fault == RankFault.ALUMINIUM_ELBOWS && f.kind() == TubeFitting.Kind.ELBOW_90;
        boolean zinc = f.wetted() == TubeFitting.Wetted.ZINC_PLATED && fault != RankFault.ZINC_TAKEN;
        return !zinc && (!aluminium || let);
    }

    private static boolean is(Optional<Dimension> takes, Dimension size) {
        return takes.isPresent() && takes.get().valueHmm() == size.valueHmm();
    }

    /** For pump, reservoir, blocks and the drain. */
    long fixedCents(List<Part> parts) {
        int elbowed = 2;
        for (Part part : parts) {
            elbowed += part instanceof GraphicsCard c && c.cooling() == GraphicsCard.Cooling.BLOCK ? 1 : 0;
        }
        int reservoirs =
                (int) parts.stream().filter(Reservoir.class::isInstance).count();
        int straighted = elbowed + (fault == RankFault.NO_FITTINGS_AT_RESERVOIRS ? 0 : reservoirs);
        if (fault == RankFault.ELBOWS_AT_RESERVOIRS) {
            elbowed += reservoirs;
        }
        return fault == RankFault.NO_FITTINGS ? 0 : cents(straighted, elbowed) + price(drain);
    }

    /** For one radiator. */
    long radiatorCents() {
        return fault == RankFault.NO_FITTINGS ? 0 : cents(1, 1);
    }

    private long cents(int straighted, int elbowed) {
        return (long) STRAIGHTS_PER_PART * straighted * price(straight) + (long) elbowsPerPart * elbowed * price(elbow);
    }

    private static long price(Optional<TubeFitting> one) {
        return one.map(f -> f.buy().priceCents()).orElse(0L);
    }

    /** The longest wait for one that is needed. */
    int leadDays() {
        if (fault == RankFault.FITTINGS_AT_ONCE || fault == RankFault.NO_FITTINGS) {
            return 0;
        }
        int elbows = elbowsPerPart == 0 ? 0 : days(elbow);
        return Math.max(elbows, Math.max(days(straight), days(drain)));
    }

    private static int days(Optional<TubeFitting> one) {
        return one.map(f -> f.buy().leadDays()).orElse(0);
    }
}
