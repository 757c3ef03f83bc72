package loopwright.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.function.Supplier;
import loopwright.answer.Unlocks.AtMount;
import loopwright.answer.Unlocks.Combination;
import loopwright.answer.Unlocks.Impossible;
import loopwright.answer.Unlocks.RadiatorClass;
import loopwright.answer.Unlocks.Way;
import loopwright.catalog.chassis.Mod;
import loopwright.fit.FitCase;
import loopwright.fit.FitResult;
import loopwright.fit.FitSearch;
import loopwright.fit.FitWish;
import loopwright.fit.Layout.Stack;
import loopwright.fit.MountFrame;
import loopwright.loop.Band;

/** What each mod unlocks in one chassis: the list of what fits, and what is read off it when it is asked for. */
public final class UnlockAnswer {

    private final FitCase fitCase;
    private final FitWish wish;
    private final List<String> mounts;
    private final Halt halt;
    private final FitResult fits;
    private final OptionalDouble heatW;
    private final Cooling cooling;
    private final Supplier<UnlockSearch> asked;
    private final Supplier<Unlocks> unlocks;
    private final Supplier<AsDelivered> asDelivered;

    /**
     * Searches.
     *
     * @param mounts ids of the mounts that are shown; all when there are none
     */
    public UnlockAnswer(FitCase fitCase, FitWish wish, List<String> mounts, Halt halt) {
        this.fitCase = fitCase;
        this.wish = wish;
        this.mounts = List.copyOf(mounts);
        this.halt = halt;
        FitSearch search = new FitSearch(fitCase, wish, () -> halt.because().isPresent());
        this.fits = search.run();
        this.cooling = new Cooling(fitCase);
        this.heatW = cooling.heatW();
        this.asked = Once.of(() -> new UnlockSearch(fitCase, search, fits, cooling));
        this.unlocks = Once.of(() -> asked.get().answer());
        this.asDelivered = Once.of(() -> new AsDelivered(fitCase));
    }

    /** The case that was asked about. */
    public FitCase fitCase() {
        return fitCase;
    }

    /** How the question was narrowed. */
    public FitWish wish() {
        return wish;
    }

    /** Every layout that fits. */
    public FitResult fits() {
        return fits;
    }

    /** Why something may be missing, where it may be. */
    public Optional<String> incompleteBecause() {
        return fits.incompleteBecause()
                .map(b -> b.equals("interrupted") ? halt.because().orElse(b) : b);
    }

    /** The heat that is reckoned with, W: the least of any choice of parts; empty when no choice goes together. */
    public OptionalDouble heatW() {
        return heatW;
    }

    /** The mounts that are shown. */
    public List<AtMount> mounts() {
        return unlocks.get().mounts().stream()
                .filter(m -> shows(m.frame().mount().id()))
                .toList();
    }

    /** Every way to have the layout with a key, cheapest first; empty when no layout with that key fits. */
    public List<Way> waysTo(String key) {
        return fits.fits().stream()
                .filter(f -> f.layout().key().equals(key))
                .findFirst()
                .map(f -> asked.get().waysTo(f))
                .orElse(List.of());
    }

    /** Coolant over room with the best layout as delivered, K; empty when nothing fits as delivered. */
    public OptionalDouble asDeliveredOverRoomK() {
        return unlocks.get().asDeliveredOverRoomK();
    }

    /** The combinations that no other beats, with a stack on a mount that is shown; cheapest first. */
    public List<Combination> combinations() {
        return unlocks.get().combinations().stream()
                .filter(c -> c.layout().layout().stacks().stream()
                        .anyMatch(s -> shows(s.frame().mount().id())))
                .toList();
    }

    /** Coolant over room with a combination, K; empty when nothing conducts. */
    public OptionalDouble overRoomK(Combination combination) {
        return cooling.coolest(combination.layout().layout(), combination.mods())
                .map(c -> OptionalDouble.of(cooling.overRoomK(c)))
                .orElse(OptionalDouble.empty());
    }

    /** The band of that temperature. */
    public Optional<Band> overRoomBand(Combination combination) {
        return cooling.coolest(combination.layout().layout(), combination.mods())
                .map(cooling::band);
    }

    /** The band of coolant over room as delivered. */
    public Optional<Band> asDeliveredBand() {
        return unlocks.get().asDeliveredBand();
    }

    /** Why a mount takes nothing as delivered. */
    public AsDelivered.Reason whyNothing(MountFrame frame) {
        return asDelivered.get().whyNothing(frame);
    }

    /** What must be measured before anybody can say whether a class fits alone on a mount; empty when nothing must. */
    public List<String> toMeasure(MountFrame frame, RadiatorClass radiator) {
        return fits.unknown().stream()
                .filter(u -> isAlone(u.layout().stacks(), frame, radiator))
                .findFirst()
                .map(u -> List.copyOf(u.measure()))
                .orElse(List.of());
    }

    /** What is known of a class that nothing in the list unlocks. */
    public UnlockState state(MountFrame frame, Impossible each) {
        if (!toMeasure(frame, each.stack()).isEmpty()) {
            return UnlockState.UNKNOWN;
        }
        return each.shortfall().shortfallHmm().orElse(1) > 0 ? UnlockState.IMPOSSIBLE : UnlockState.NOT_REACHED;
    }

    private static boolean isAlone(List<Stack> stacks, MountFrame frame, RadiatorClass radiator) {
        return stacks.size() == 1
                && stacks.get(0).frame().index() == frame.index()
                && RadiatorClass.of(stacks.get(0)).equals(radiator);
    }

    /** The mounts' frames that are shown. */
    public List<MountFrame> frames() {
        return fitCase.frames().stream().filter(f -> shows(f.mount().id())).toList();
    }

    /**
     * What fits with at most 0, 1, … cuts.
     *
     * @param cuts the last number; from the number of cuts of all mods on, nothing changes any more
     */
    public List<CutTable.Row> cutRows(int cuts) {
        int most = fitCase.chassis().mods().stream()
                .map(Mod::look)
                .mapToInt(l -> l.visibleCuts() + l.hiddenCuts())
                .sum();
        List<CutTable.Row> out = new ArrayList<>(CutTable.rows(fitCase, fits, Math.min(cuts, most)));
        CutTable.Row last = out.get(out.size() - 1);
        for (int n = out.size(); n <= cuts; n++) {
            out.add(new CutTable.Row(n, last.all(), last.hiddenOnly()));
        }
        return List.copyOf(out);
    }

    private boolean shows(String mount) {
        return mounts.isEmpty() || mounts.contains(mount);
    }

    /** A wish for the chassis as delivered: no mod at all. */
    static FitWish without(FitCase fitCase) {
        return new FitWish(
                List.of(),
                fitCase.chassis().mods().stream().map(Mod::id).toList(),
                OptionalInt.empty(),
                OptionalLong.empty());
    }
}
