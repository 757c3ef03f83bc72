package loopwright.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import loopwright.fit.ModModel.ModWorld;
import loopwright.fit.Scene.Setting;
import loopwright.fit.SceneMaker.Knowledge;
import loopwright.geometry.Verdict;

/**
 * How much room a stack lacks on a mount, over every valid mod set, placing and position.
 *
 * <p>Where tight places are refused, room is what such a place would need not to be tight.
 *
 * <p>Unit: hundredths of a millimetre. A pair's largest margin by itself bounds what it can have together with others,
 * so most placings are passed over.
 */
public final class Shortfalls {

    /** Nothing in a machine overlaps by more, 10 m. */
    private static final int LOWEST = -1_000_000;

    /** Said where a stack could hang, but the brief's parts find no places with any mod set. */
    private static final String NO_PLACES = "the parts do not all fit in, whatever hangs there";

    private final FitSearch search;
    private final Strictness strictness;
    private final Map<Long, Integer> pairMargins = new HashMap<>();
    private final Map<Integer, Integer> wallMargins = new HashMap<>();

    /** Shortfalls that share what a search has already made. */
    public Shortfalls(FitSearch search) {
        this.search = search;
        this.strictness = search.fitCase().strictness();
    }

    /**
     * What is lacking.
     *
     * @param shortfallHmm how much, absent where it could not hang at all
     * @param blockedBy what it meets, or why it cannot hang
     * @param mods the set with which the least is lacking
     */
    public record Shortfall(Optional<Integer> shortfallHmm, String blockedBy, ModSet mods) {}

    /** The best way so far. */
    private record Best(Hang hang, Setting setting, Scene scene, int marginHmm) {}

    /** The least that is lacking for any of some shapes, alone on a mount. */
    public Shortfall of(MountFrame frame, List<Shape> shapes) {
        Optional<Best> best = Optional.empty();
        Seating.Hindrance mildest = Seating.Hindrance.NO_SEAT;
        ModSet mildestWith = ModSet.NONE;
        boolean couldHang = false;
        Set<List<Object>> seen = new HashSet<>();
        for (ModWorld world : search.worlds()) {
            Scene scene = search.maker().scene(world, Knowledge.KNOWN_ONLY);
            ModSet about = world.mods()
                    .and(ModRules.aboutMount(
                            search.fitCase().chassis(), frame.mount().id()));
            if (!seen.add(List.of(about, scene.builtIn(), world.usable()))) {
                continue;
            }
            for (Shape shape : shapes) {
                Seating.Hindrance hindrance = search.fitCase().seating().hindrance(frame, shape, about);
                if (hindrance.compareTo(mildest) > 0 || hindrance == Seating.Hindrance.NONE) {
                    mildestWith = hindrance == mildest ? mildestWith : world.mods();
                    mildest = hindrance == Seating.Hindrance.NONE ? mildest : hindrance;
                }
                if (hindrance == Seating.Hindrance.NONE) {
                    couldHang = true;
                    best = improve(best, frame, shape, about, scene);
                }
            }
        }
        if (best.isEmpty()) {
            return new Shortfall(Optional.empty(), couldHang ? NO_PLACES : mildest.text(), mildestWith);
        }
        return told(best.get());
    }

    private Optional<Best> improve(Optional<Best> soFar, MountFrame frame, Shape shape, ModSet about, Scene scene) {
        Optional<Best> best = soFar;
        for (Hang hang : search.maker().hangs(frame, shape, about)) {
            if (hang.occupant().isUnknown()) {
                continue;
            }
            for (Setting setting : scene.settings()) {
                int floor = best.map(Best::marginHmm).orElse(LOWEST);
                if (bound(hang, setting, scene) > floor) {
                    Positions positions = positions(hang, setting, scene);
                    if (positions.feasible(floor + 1)) {
                        int margin = positions.largestMargin(floor + 1, spare(setting));
                        best = Optional.of(new Best(hang, setting, scene, margin));
                    }
                }
            }
        }
        return best;
    }

    /** What those that do not slide have to spare, at most: they are as far apart as is asked. */
    private int spare(Setting setting) {
        return strictness == Strictness.NOMINAL ? setting.marginHmm() : 0;
    }

    private int bound(Hang hang, Setting setting, Scene scene) {
        int least = Math.min(spare(setting), wallMargin(hang));
        for (int body : scene.builtIn()) {
            least = Math.min(least, pairMargin(hang, body));
        }
        for (int body : setting.bodies()) {
            least = Math.min(least, pairMargin(hang, body));
        }
        return least;
    }

    private int wallMargin(Hang hang) {
        return wallMargins.computeIfAbsent(
                hang.id(), k -> largest(hang, search.maker().pairs().wallSides(hang, strictness)));
    }

    private int pairMargin(Hang hang, int body) {
        return pairMargins.computeIfAbsent(
                (long) hang.id() << 32 | body,
                k -> largest(hang, search.maker().pairs().sides(hang, body, strictness)));
    }

    private int largest(Hang hang, List<int[]> sides) {
        return new Positions(search.maker().pairs().domains(List.of(hang)), sides)
                .largestMargin(LOWEST, PairTable.NO_LIMIT);
    }

    private Positions positions(Hang hang, Setting setting, Scene scene) {
        PairTable pairs = search.maker().pairs();
        List<int[]> sides = new ArrayList<>(pairs.wallSides(hang, strictness));
        setting.bodies().forEach(b -> sides.addAll(pairs.sides(hang, b, strictness)));
        scene.builtIn().forEach(b -> sides.addAll(pairs.sides(hang, b, strictness)));
        return new Positions(pairs.domains(List.of(hang)), sides);
    }

    /** A gap's margin, beyond what keeps it from being tight where that is asked. */
    private int toSpare(Gap gap) {
        return strictness == Strictness.NO_TIGHT
                ? Math.min(gap.marginHmm() - Verdict.TIGHT_BELOW_HMM, gap.worstCaseHmm())
                : gap.marginHmm();
    }

    private Shortfall told(Best best) {
        int[] at = positions(best.hang(), best.setting(), best.scene())
                .least(best.marginHmm())
                .orElseThrow();
        int variable = 2 * best.hang().frame().index();
        List<Standing> standing = new ArrayList<>();
        standing.add(Standing.at(best.hang(), at[variable], at[variable + 1]));
        Bodies bodies = search.maker().bodies();
        best.scene().builtIn().forEach(b -> standing.add(Standing.still(bodies.get(b))));
        best.setting().bodies().forEach(b -> standing.add(Standing.still(bodies.get(b))));
        String stack = best.hang().occupant().name();
        Gap worst = new Recheck(search.fitCase().chassis())
                .gaps(standing).stream()
                        .filter(g -> g.one().startsWith(stack) || g.other().startsWith(stack))
                        .min(Comparator.comparingInt(this::toSpare))
                        .orElseThrow();
        String blocker = worst.one().startsWith(stack) ? worst.other() : worst.one();
        return new Shortfall(
                Optional.of(-best.marginHmm()), blocker, best.scene().mods());
    }
}
