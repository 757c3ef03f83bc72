package loopwright.workshop.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import loopwright.answer.InspectAnswer;
import loopwright.answer.Inspection;
import loopwright.answer.cable.CablePlan;
import loopwright.catalog.part.Lead;
import loopwright.plumbing.FittingBill;
import loopwright.plumbing.LoopPlan;
import loopwright.rank.Bill;
import loopwright.rank.Bill.Bought;

/**
 * What is really bought for a build: the ranking's list, with tube, coolant and fittings as the runs are planned, and the leads that
 * fans and cables want.
 *
 * <p>Tube and coolant: what the plan takes, and at least what the brief says, in steps of a tenth of a metre or litre. Fittings: the
 * plan's, where every run is laid and the catalogue has them all; else they stay as the ranking counts them.
 */
public final class Purchases {

    /** Decimals of metres and litres that are bought. */
    private static final int DECIMALS = 1;

    private static final int ML_DIGITS = 3;
    private static final int HMM_PER_M_DIGITS = 5;

    private Purchases() {}

    /** What is bought for a build. */
    public static List<Bought> of(InspectAnswer answer) {
        Inspection in = answer.inspection();
        LoopPlan plan = answer.plumbing().plan();
        boolean laid = plan.isReachable();
        FittingBill fittings = plan.materials().bill();
        boolean whole = laid && fittings.missing().isEmpty();
        List<Bought> out = new ArrayList<>();
        for (Bought line : Bill.of(in.fitCase(), in.build()).bought()) {
            switch (line.role()) {
                case "tube" -> out.add(laid ? atLeast(line, metres(plan.tubeHmm())) : line);
                case "coolant" ->
                    out.add(atLeast(line, litres(plan.materials().coolant().orderML())));
                case "fittings" -> {
                    if (!whole) {
                        out.add(line);
                    }
                }
                default -> out.add(line);
            }
        }
        if (whole) {
            fittings.lines().forEach(f -> out.add(Bought.pieces("fittings", f.fitting(), f.count())));
        }
        leads(answer)
                .forEach((id, count) ->
                        out.add(Bought.pieces("lead", in.fitCase().catalog().part(Lead.class, id), count)));
        return List.copyOf(out);
    }

    private static Map<String, Integer> leads(InspectAnswer answer) {
        Map<String, Integer> out = new TreeMap<>();
        answer.inspection()
                .powering()
                .wiring()
                .ifPresent(w -> w.leads().forEach(l -> out.merge(l.id(), 1, Integer::sum)));
        answer.cables().stream()
                .flatMap(p -> p.feeds().stream())
                .map(CablePlan.Feed::cure)
                .flatMap(java.util.Optional::stream)
                .flatMap(c -> c.leads().stream())
                .forEach(l -> out.merge(l.id(), 1, Integer::sum));
        return out;
    }

    private static BigDecimal metres(long hmm) {
        return BigDecimal.valueOf(hmm, HMM_PER_M_DIGITS).setScale(DECIMALS, RoundingMode.CEILING);
    }

    private static BigDecimal litres(double mL) {
        return BigDecimal.valueOf(mL).movePointLeft(ML_DIGITS).setScale(DECIMALS, RoundingMode.CEILING);
    }

    private static Bought atLeast(Bought line, BigDecimal planned) {
        if (planned.compareTo(line.quantity()) <= 0) {
            return line;
        }
        return Bought.amount(line.role(), line.part(), planned, line.unit());
    }
}
