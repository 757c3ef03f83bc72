package loopwright.answer;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import loopwright.answer.why.WhyAnswer;
import loopwright.answer.why.Wishes;
import loopwright.fit.FitCase;
import loopwright.fit.FitWish;
import loopwright.loop.Band;
import loopwright.loop.MachineModel;
import loopwright.loop.Steady;
import loopwright.loop.Swings;
import loopwright.rank.Build;
import loopwright.rank.BuildLimits;
import loopwright.rank.Order;
import loopwright.rank.RankResult;
import loopwright.rank.RankResult.Ranked;
import loopwright.rank.RankSearch;

/** The builds worth offering in one chassis, and how they compare. */
public final class RankAnswer {

    /** Kelvin in a hundredth of one. */
    private static final double CENTI = 100;

    private final FitCase fitCase;
    private final Halt halt;
    private final MachineModel model;
    private final Map<String, Swings> swings = new HashMap<>();
    private final RankWish wish;
    private final RankResult result;
    private final Supplier<WhyAnswer> why;

    /** Ranks. */
    public RankAnswer(FitCase fitCase, FitWish wish, RankWish ranked, Halt halt) {
        this.fitCase = fitCase;
        this.halt = halt;
        this.model = Sites.model(fitCase);
        this.wish = ranked;
        this.why = Once.of(() -> new WhyAnswer(fitCase, Wishes.ofNothing(fitCase, wish), halt));
        this.result = new RankSearch(fitCase, wish, model, () -> halt.because().isPresent())
                .run(
                        ranked.order(),
                        ranked.top(),
                        l -> ranked.layout().isEmpty() || ranked.layout().get().equals(l.key()));
    }

    /**
     * What the list is ordered by, and how long it is.
     *
     * @param layout key of the only layout looked at, where there is one
     */
    public record RankWish(Order order, int top, Optional<String> layout) {}

    /** The case that was asked about. */
    public FitCase fitCase() {
        return fitCase;
    }

    /** The result. */
    public RankResult result() {
        return result;
    }

    /** What the list is ordered by. */
    public Order order() {
        return wish.order();
    }

    /** Why nothing fits, or why no build keeps the limits; for where there is no build and nothing was left out. */
    public Optional<WhyAnswer> why() {
        boolean none = result.unbeaten().isEmpty() && incompleteBecause().isEmpty() && !isForMetals();
        boolean unknown =
                result.fits().fits().isEmpty() && !result.fits().unknown().isEmpty();
        return none && !unknown && wish.layout().isEmpty() ? Optional.of(why.get()) : Optional.empty();
    }

    /** Why there is no build to show; only asked when there is none. */
    public String whyNone() {
        if (incompleteBecause().isPresent()) {
            return "No build found yet: the search was stopped before it was done.";
        }
        if (isForMetals()) {
            return "No build: every choice of parts has aluminium and copper in one loop. " + MetalWords.of(fitCase);
        }
        if (!result.fits().fits().isEmpty()) {
            return "No build keeps every limit of the brief.";
        }
        if (!result.fits().unknown().isEmpty()) {
            return "Nothing is known to fit, but " + result.fits().unknown().size()
                    + " layouts may, once measured: fit names what to measure.";
        }
        return wish.layout()
                .map(key -> "No layout with the key " + key + " fits here: fit lists the keys.")
                .orElse("Nothing fits, so there is nothing to rank.");
    }

    /** Whether every layout that fits fails for the metals of its loop alone. */
    private boolean isForMetals() {
        return result.unbeaten().isEmpty() && result.cheaper().keySet().equals(Set.of(BuildLimits.MIXED_METALS));
    }

    /** Why builds may be missing, where they may be. */
    public Optional<String> incompleteBecause() {
        return result.incompleteBecause()
                .map(b -> b.equals("interrupted") ? halt.because().orElse(b) : b);
    }

    /** Coolant over room, K. */
    public double coolantOverRoomK(Build build) {
        return build.outcome().coolantOverRoomCentiK() / CENTI;
    }

    /** The band that temperature lies in. */
    public Band band(Build build) {
        return swings(build).band(Steady::coolantOverRoomK);
    }

    /** How much cooler the first is than the second, in a band that counts what both share once. */
    public Band gainBand(Build first, Build second) {
        return swings(second).less(swings(first), Steady::coolantOverRoomK);
    }

    /** The state of a build, and how far its figures swing. */
    public Swings swings(Build build) {
        return swings.computeIfAbsent(build.key(), k -> Swings.of(model, build.machine()));
    }

    /**
     * A few unbeaten builds that stand for all: both ends, and between them the cheapest at or below each of equally
     * spaced temperatures.
     */
    public List<Ranked> spread(int count) {
        List<Ranked> all = result.unbeaten();
        if (all.size() <= count) {
            return all;
        }
        List<Ranked> out = new ArrayList<>();
        double coolest = coolantOverRoomK(all.get(0).build());
        double hottest = coolantOverRoomK(all.get(all.size() - 1).build());
        for (int i = 0; i < count; i++) {
            double level = coolest + (hottest - coolest) * i / (count - 1);
            Ranked pick = all.get(0);
            for (Ranked one : all) {
                pick = coolantOverRoomK(one.build()) <= level + 1 / CENTI / 2 ? one : pick;
            }
            if (out.isEmpty() || !out.get(out.size() - 1).equals(pick)) {
                out.add(pick);
            }
        }
        return List.copyOf(out);
    }
}
